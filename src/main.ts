import './ui/font.css'
import './ui/tokens.css'
import { Session } from './session/session.ts'
import { Bench } from './ui/bench.ts'

const bench = new Bench()
bench.session = new Session()
document.body.append(bench)
