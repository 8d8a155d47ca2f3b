/** The section at the nip as SVG on white, for paper: the bench's own drawing, its words left out to be filled in. */
import type { SVGTemplateResult, TemplateResult } from 'lit'
import { html, svg } from 'lit'
import type { Bench } from '../../lesson/bench.ts'
import type { Stand } from '../../lesson/stand.ts'
import { benchForFigure } from '../../session/lesson-bench.ts'
import type { BenchPicture } from '../../view/picture.ts'
import { sectionDrawing } from '../../view/section-drawing.ts'
import type { Shape } from '../../view/shapes.ts'
import { anchorOf, arcOf, hex, pathOf } from '../../view/svg-shapes.ts'
import { onPaper } from '../pictures/on-paper.ts'
import { benchPicture } from '../bench-picture.ts'
import { say } from '../say.ts'

/** px; letters of 13 px then print at about 9 pt across a page */
const size = { width: 620, height: 300 }

export function sectionFigure(bench: Bench, stand: Stand): TemplateResult {
  const { width, height } = size
  const shapes = sectionDrawing(blankPicture(bench, stand), size)
  return html`<svg viewBox="0 0 ${width} ${height}" role="img" aria-label=${say('lessons.figurePicture')}>
    ${shapes.map(shapeView)}
  </svg>`
}

function blankPicture(bench: Bench, stand: Stand): BenchPicture {
  const picture = benchPicture(benchForFigure(bench, stand))
  const words = { ...picture.words, paper: '', blanket: '', plate: '' }
  return { ...picture, theme: onPaper, words, motion: true }
}

function shapeView(shape: Shape): SVGTemplateResult {
  switch (shape.kind) {
    case 'outline':
      return svg`<path
        d=${pathOf(shape.points, shape.closed)}
        fill=${shape.closed && shape.fill !== undefined ? hex(shape.fill) : 'none'}
        stroke=${shape.line === undefined ? 'none' : hex(shape.line)}
        stroke-width=${shape.width ?? 1}
        opacity=${shape.opacity ?? 1}
      />`
    case 'disc':
      return svg`<circle
        cx=${shape.x}
        cy=${shape.y}
        r=${shape.radius}
        fill=${shape.fill === undefined ? 'none' : hex(shape.fill)}
        stroke=${shape.line === undefined ? 'none' : hex(shape.line)}
        stroke-width=${shape.width ?? 1}
        opacity=${shape.opacity ?? 1}
      />`
    case 'arc':
      return svg`<path
        d=${arcOf(shape)}
        fill="none"
        stroke=${hex(shape.line)}
        stroke-width=${shape.width}
        opacity=${shape.opacity ?? 1}
      />`
    case 'lettering':
      return svg`<text
        x=${shape.x}
        y=${shape.y + (1 - shape.anchor[1]) * shape.size * 0.8 - (shape.anchor[1] === 1 ? shape.size * 0.2 : 0)}
        font-size=${shape.size}
        font-weight=${shape.bold ? 700 : 400}
        fill=${hex(shape.colour)}
        text-anchor=${anchorOf(shape.anchor[0])}
      >${shape.text}</text>`
  }
}
