/** A drawing as an SVG file of a width in print: its title, what it shows, and a caption below it. */
import { escaped, tag } from './svg-shapes.ts'

export interface Drawing {
  /** px, in which `markup` is written, from 0 at the top left */
  width: number
  height: number
  /** SVG elements */
  markup: string
}

export interface Caption {
  title: string
  /** what is seen, for those who do not see it */
  description: string
  /** below the picture, in lines of their own */
  lines: readonly string[]
}

/** px of the caption's letters, and from line to line: as the small letters of the pictures */
const letters = 13
const lineHigh = 18
const margin = 8

/** A file of `width` mm. */
export function svgFile(drawing: Drawing, { title, description, lines }: Caption, width: number): string {
  const written = lines.flatMap((line) => wrapped(line, drawing.width - 2 * margin))
  const height = captionedHeight(drawing, lines)
  const caption = written.map((text, line) =>
    tag(
      'text',
      { x: margin, y: drawing.height + margin + (line + 0.8) * lineHigh, 'font-size': letters, fill: '#1c1b1a' },
      text,
    ),
  )
  const tall = Math.round((100 * width * height) / drawing.width) / 100
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${tall}mm" viewBox="0 0 ${drawing.width} ${height}" role="img" aria-labelledby="title desc" font-family="'Source Sans 3', 'Noto Sans', sans-serif">
<title id="title">${escaped(title)}</title>
<desc id="desc">${escaped(description)}</desc>
${tag('rect', { width: drawing.width, height, fill: '#ffffff' })}
${drawing.markup}
${caption.join('\n')}
</svg>
`
}

/** px with the caption. */
function captionedHeight(drawing: Drawing, lines: readonly string[]): number {
  const count = lines.flatMap((line) => wrapped(line, drawing.width - 2 * margin)).length
  return drawing.height + (count === 0 ? 0 : 2 * margin + count * lineHigh)
}

/** Lines that fit: half an em a letter is what shapes.ts reckons with. */
export function wrapped(text: string, room: number): string[] {
  const most = Math.max(10, Math.floor(room / (0.5 * letters)))
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (line !== '' && line.length + 1 + word.length > most) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return line === '' ? lines : [...lines, line]
}
