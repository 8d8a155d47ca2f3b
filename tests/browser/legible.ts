/** What a person with weak eyes would miss: letters cut off or lying on one another, and edges and lines too faint. */
import type { Page } from '@playwright/test'
import { drawn } from './drawn.ts'

/** px by which letters may reach over an edge: their boxes are taller than what is drawn of them */
const spare = 4

/** Whatever is cut off, lies over other words or sticks out to the side, one line for each. */
export async function cutOff(page: Page): Promise<string[]> {
  await drawn(page)
  return page.evaluate((spare) => {
    const found = new Set<string>()
    const root = document.documentElement
    if (root.scrollWidth > root.clientWidth) found.add(`the page is ${root.scrollWidth - root.clientWidth} px too wide`)
    const outer = (element: Element): Element | null =>
      element.assignedSlot ?? element.parentElement ?? (element.getRootNode() as Partial<ShadowRoot>).host ?? null
    const called = (element: Element) => {
      const host = (element.getRootNode() as Partial<ShadowRoot>).host?.localName ?? ''
      return `${host} ${element.localName}.${element.getAttribute('class') ?? ''} "${element.textContent.trim().slice(0, 40)}"`
    }
    interface Text {
      element: Element
      box: { left: number; top: number; right: number; bottom: number }
      floats: boolean
    }
    const texts: Text[] = []
    /** What can be seen of a text's box through everything around it; null where it is read out alone. */
    const seen = (element: Element, { left, top, right, bottom }: DOMRect): Text | null => {
      // A line's box is taller than its letters.
      const lead = 0.22 * (bottom - top)
      const box = { left, top: top + lead, right, bottom: bottom - lead }
      let floats = false
      for (let around: Element | null = element; around && around !== root; around = outer(around)) {
        const { overflowX, overflowY, clipPath, position } = getComputedStyle(around)
        if (clipPath !== 'none') return null
        const edge = around.getBoundingClientRect()
        if (overflowX !== 'visible') {
          const hides = overflowX === 'hidden' || overflowX === 'clip'
          if (hides && (box.left < edge.left - spare || box.right > edge.right + spare))
            found.add(`cut: ${called(element)}`)
          Object.assign(box, { left: Math.max(box.left, edge.left), right: Math.min(box.right, edge.right) })
        }
        if (overflowY !== 'visible') {
          const hides = overflowY === 'hidden' || overflowY === 'clip'
          if (hides && (box.top < edge.top - spare || box.bottom > edge.bottom + spare))
            found.add(`cut: ${called(element)}`)
          Object.assign(box, { top: Math.max(box.top, edge.top), bottom: Math.min(box.bottom, edge.bottom) })
        }
        // What is pinned or pops up lies over other words by intent.
        floats ||=
          position === 'sticky' || position === 'fixed' || (position === 'absolute' && around.matches('.problem'))
      }
      return box.left < box.right && box.top < box.bottom ? { element, box, floats } : null
    }
    const look = (around: Element | ShadowRoot) => {
      for (const element of around.children) {
        if (element.shadowRoot) look(element.shadowRoot)
        look(element)
        if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue
        if (element.localName === 'button' && element.scrollWidth > element.clientWidth + spare)
          found.add(`too wide for its button: ${called(element)}`)
        for (const node of element.childNodes) {
          if (node.nodeType !== Node.TEXT_NODE || !node.textContent?.trim()) continue
          const range = document.createRange()
          range.selectNodeContents(node)
          for (const box of range.getClientRects()) {
            const text = seen(element, box)
            if (text) texts.push(text)
          }
        }
      }
    }
    look(document.body)
    texts.sort((a, b) => a.box.top - b.box.top)
    texts.forEach((one, at) => {
      for (const other of texts.slice(at + 1)) {
        if (other.box.top >= one.box.bottom) break
        if (one.element === other.element || one.floats !== other.floats) continue
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left)
        const high = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top)
        if (wide > spare && high > spare / 2) found.add(`${called(one.element)} lies on ${called(other.element)}`)
      }
    })
    return [...found]
  }, spare)
}

/** WCAG 2.2, 1.4.11 */
const leastContrast = 3

/**
 * Controls, lines of drawings and boxes that are nothing but their colour, where they do not stand out from what is behind
 * them. Lines to read along (`.grid`) and the colours of inks, which have an outline of their own, may be faint.
 */
export async function tooFaint(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const found = new Set<string>()
    type Colour = readonly [number, number, number, number]
    const colour = (text: string): Colour | null => {
      const [r, g, b, a = 1] = Array.from(/^rgba?\((.+)\)$/.exec(text)?.[1].matchAll(/[\d.]+/g) ?? [], Number)
      return text === 'none' || a === 0 ? null : [r, g, b, a]
    }
    const over = ([r, g, b, a]: Colour, behind: Colour): Colour => [
      r * a + behind[0] * (1 - a),
      g * a + behind[1] * (1 - a),
      b * a + behind[2] * (1 - a),
      1,
    ]
    const luminance = ([r, g, b]: Colour) => {
      const [x, y, z] = [r, g, b].map((part) => {
        const share = part / 255
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
      })
      return 0.2126 * x + 0.7152 * y + 0.0722 * z
    }
    const contrast = (one: Colour | null, other: Colour) => {
      if (!one) return 1
      const [light, dark] = [luminance(over(one, other)), luminance(other)].sort((a, b) => b - a)
      return (light + 0.05) / (dark + 0.05)
    }
    const outer = (element: Element): Element | null =>
      element.assignedSlot ?? element.parentElement ?? (element.getRootNode() as Partial<ShadowRoot>).host ?? null
    const ground = (element: Element | null): Colour => {
      const own = element ? colour(getComputedStyle(element).backgroundColor) : ([255, 255, 255, 1] as const)
      if (!element || own?.[3] === 1) return own as Colour
      return own ? over(own, ground(outer(element))) : ground(outer(element))
    }
    const called = (element: Element) => {
      const host = (element.getRootNode() as Partial<ShadowRoot>).host?.localName ?? ''
      return `${host} ${element.localName}.${element.getAttribute('class') ?? ''} "${element.textContent.trim().slice(0, 30)}"`
    }
    const edge = ({ borderTopColor, borderTopWidth }: CSSStyleDeclaration) =>
      parseFloat(borderTopWidth) > 0 ? colour(borderTopColor) : null
    const isFaint = (element: Element): boolean => {
      const style = getComputedStyle(element)
      if (element instanceof SVGGeometryElement) {
        if (element.closest('defs') || element.matches('.grid, .film, .ink')) return false
        // What is drawn upon paper stands out from that.
        if (element.closest('svg')?.querySelector('.paper') && element.matches('circle, .through')) return false
        const svg = element.ownerSVGElement as Element
        const isLine = element.matches('line, polyline')
        const inks = [style.stroke, isLine ? 'none' : style.fill].map(colour)
        return inks.some(Boolean) && inks.every((ink) => contrast(ink, ground(svg)) < least)
      }
      if (
        element.matches('button, select, textarea, input:not([type=radio], [type=checkbox], [type=range], [type=file])')
      ) {
        // A button that is nothing but its word needs no edge.
        if (element.matches(':disabled, :hover') || element.getBoundingClientRect().width <= 1) return false
        const [line, behind, own] = [edge(style), ground(outer(element)), ground(element)]
        if (element.localName === 'button' && !line && own.join() === behind.join()) return false
        return Math.max(contrast(line, behind), contrast(own, behind)) < least
      }
      const { width, height } = element.getBoundingClientRect()
      const isBox = element.matches('span, div') && element.childNodes.length === 0 && width > 3 && height > 1
      const own = colour(style.backgroundColor)
      if (!isBox || !own) return false
      const behind = ground(outer(element))
      return Math.max(contrast(own, behind), contrast(edge(style), behind)) < least
    }
    const look = (around: Element | ShadowRoot) => {
      for (const element of around.children) {
        if (element.shadowRoot) look(element.shadowRoot)
        look(element)
        if (element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && isFaint(element))
          found.add(called(element))
      }
    }
    look(document.body)
    return [...found]
  }, leastContrast)
}
