/** Everything below an element or a shadow root, in every shadow tree, in the order of the page. */
export function* within(root: Element | ShadowRoot): Generator<Element> {
  for (const element of root.children) {
    yield element
    if (element.shadowRoot) yield* within(element.shadowRoot)
    yield* within(element)
  }
}
