/** What is drawn over the lines of a run: upright lines at the events and at the sheet looked at, and the lines' names. */
import type UPlot from 'uplot'

interface Marks {
  /** where events stand, and the sheet looked at, on the chart's own scale along the bottom */
  events: readonly number[]
  marker: number | null
  /** each line's name, and its value at the end */
  ends: readonly { label: string; value: number }[]
  /** colours of the page */
  graphite: string
  soft: string
  /** px */
  letters: number
  font: string
}

/** px between a line's end and its name */
const gap = 4

export function drawMarks(chart: UPlot, { events, marker, ends, graphite, soft, letters, font }: Marks): void {
  const { ctx } = chart
  const ratio = devicePixelRatio
  ctx.save()
  for (const event of events) upright(chart, event, { width: 1.5, colour: soft, dash: [4, 4] })
  if (marker !== null) upright(chart, marker, { width: 3, colour: graphite, dash: [] })
  ctx.fillStyle = graphite
  ctx.font = `${letters * ratio}px ${font}`
  ctx.textBaseline = 'middle'
  ctx.textAlign = 'left'
  const left = chart.bbox.left + chart.bbox.width + gap * ratio
  const room = ctx.canvas.width - left
  let free = 0
  const names = ends.map(({ label, value }) => ({ label, y: chart.valToPos(value, 'y', true) }))
  for (const { label, y } of names.sort((a, b) => a.y - b.y)) {
    // Names never lie on one another, even where the lines do.
    const at = Math.max(y, free)
    free = at + letters * ratio
    ctx.fillText(label, left, at, room)
  }
  ctx.restore()
}

function upright(
  chart: UPlot,
  across: number,
  { width, colour, dash }: { width: number; colour: string; dash: number[] },
): void {
  const { ctx, bbox } = chart
  const ratio = devicePixelRatio
  const x = chart.valToPos(across, 'x', true)
  if (x < bbox.left - 1 || x > bbox.left + bbox.width + 1) return
  ctx.beginPath()
  ctx.setLineDash(dash.map((each) => each * ratio))
  ctx.lineWidth = width * ratio
  ctx.strokeStyle = colour
  ctx.moveTo(x, bbox.top)
  ctx.lineTo(x, bbox.top + bbox.height)
  ctx.stroke()
}
