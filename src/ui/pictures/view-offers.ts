/** The pictures of the view that is open: every drawing in it that says what it shows. */
import type { Offer } from './offer.ts'
import { isPrintable } from './offer.ts'
import { styledCopy } from './styled-copy.ts'
import { within } from './within.ts'

/** Characters */
const longestName = 60

export function viewOffers(view: Element): Offer[] {
  const offers = [view, ...within(view.shadowRoot ?? view)].flatMap((element): Offer[] => {
    if (!element.checkVisibility()) return []
    if (isPrintable(element)) {
      const { summary, pictureName = headingOver(element) ?? summary, ofOthers = false } = element
      return [{ of: element, name: pictureName, description: summary, ofOthers, draw: () => element.printed() }]
    }
    if (!(element instanceof SVGSVGElement) || element.getAttribute('role') !== 'img') return []
    const description = element.getAttribute('aria-label') ?? ''
    return [{ of: element, name: headingOver(element) ?? description, description, draw: () => styledCopy(element) }]
  })
  return toldApart(offers)
}

/** Several under one heading are told apart by what they show. */
function toldApart(offers: readonly Offer[]): Offer[] {
  return offers.map((offer) => {
    const alone = offers.filter(({ name }) => name === offer.name).length === 1
    return alone ? offer : { ...offer, name: `${offer.name}: ${beginningOf(offer.description)}` }
  })
}

function beginningOf(text: string): string {
  const [first] = text.split(/[:;.]/)
  return first.length > longestName ? `${first.slice(0, longestName - 1)}…` : first
}

/** The heading that stands above an element, in its own tree or in that of whatever holds it. */
function headingOver(element: Element): string | null {
  for (let below: Element | null = element; below;) {
    const root = below.getRootNode()
    const headings = root instanceof ShadowRoot ? [...root.querySelectorAll('h2, h3')] : []
    const at = below
    const above = headings.findLast((heading) => heading.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING)
    const text = above?.textContent.trim() ?? ''
    if (text !== '') return text
    below = root instanceof ShadowRoot ? root.host : null
  }
  return null
}
