/** The element of the view that is open, below the head of the page. */
export function openViewElement(): Element | null {
  const page = document.querySelector('tack-page')?.shadowRoot
  return (
    [...(page?.children ?? [])].findLast((element) => element.shadowRoot && element.localName !== 'tack-page-header') ??
    null
  )
}
