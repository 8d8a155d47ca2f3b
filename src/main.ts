import './ui/font.css'

const heading = document.createElement('h1')
heading.textContent = document.title
document.body.append(heading)
