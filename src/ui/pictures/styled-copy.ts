/** A drawing of the page as SVG that stands on its own: what style sheets gave it is written into it, in light colours. */
import type { Drawing } from '../../view/svg-file.ts'

/** What is written into every shape and every text. */
const looks = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'opacity',
] as const
const lettering = ['font-size', 'font-weight', 'text-anchor', 'dominant-baseline'] as const

/** px: small drawings are brought to this width, so that a caption's letters are of their size */
const wide = 640

export function styledCopy(original: SVGSVGElement): Drawing {
  const { x, y, width, height } = viewOf(original)
  const scale = wide / width
  const copy = inLight(() => copyOf(original))
  const inner = [...copy.children].map((child) => new XMLSerializer().serializeToString(child)).join('\n')
  return {
    width: wide,
    height: Math.ceil(height * scale),
    markup: `<g transform="scale(${scale}) translate(${-x} ${-y})">\n${inner}\n</g>`,
  }
}

function viewOf(original: SVGSVGElement): { x: number; y: number; width: number; height: number } {
  const { x, y, width, height } = original.viewBox.baseVal
  if (width > 0 && height > 0) return { x, y, width, height }
  const shown = original.getBoundingClientRect()
  return { x: 0, y: 0, width: Math.max(1, shown.width), height: Math.max(1, shown.height) }
}

/** Style sheets answer at once, so nothing of the change is ever seen. */
function inLight<Result>(take: () => Result): Result {
  const { dataset } = document.documentElement
  const worn = dataset['dress']
  dataset['dress'] = 'light'
  try {
    return take()
  } finally {
    if (worn === undefined) delete dataset['dress']
    else dataset['dress'] = worn
  }
}

function copyOf(original: SVGElement): SVGElement {
  const copy = original.cloneNode(false) as SVGElement
  const style = getComputedStyle(original)
  for (const name of ['class', 'style', 'role', 'tabindex', 'aria-label', 'aria-hidden']) copy.removeAttribute(name)
  if (original instanceof SVGGeometryElement || original instanceof SVGTextContentElement) {
    const names = original instanceof SVGTextContentElement ? [...looks, ...lettering] : looks
    for (const name of names) copy.setAttribute(name, style.getPropertyValue(name))
  } else if (style.opacity !== '1') copy.setAttribute('opacity', style.opacity)
  for (const child of original.childNodes) {
    if (child instanceof Text) copy.append(child.data)
    else if (isDrawn(child)) copy.append(copyOf(child))
  }
  return copy
}

function isDrawn(child: Node): child is SVGElement {
  if (!(child instanceof SVGElement) || child instanceof SVGForeignObjectElement) return false
  return child.localName !== 'script' && child.localName !== 'style' && getComputedStyle(child).display !== 'none'
}
