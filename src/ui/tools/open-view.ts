/** Where the view that is open stands, and what takes its place when another is opened. */
export function viewPlace(): ShadowRoot | null {
  return document.querySelector('tack-page')?.shadowRoot ?? null
}

/** The element of the view that is open, below the head of the page. */
export function openViewElement(): Element | null {
  return (
    [...(viewPlace()?.children ?? [])].findLast(
      (element) => element.shadowRoot && element.localName !== 'tack-page-header',
    ) ?? null
  )
}
