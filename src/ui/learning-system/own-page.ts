/**
 * The text of the page in one file, as it was built, for a package. The single file has it in itself: what stands in its
 * head is never changed, so it is written down again, letter by letter (tested against the file). Elsewhere the file is
 * looked for beside the page.
 */
export async function ownPage(): Promise<string | null> {
  if (import.meta.env.MODE === 'file') return pageIn(document)
  try {
    const response = await fetch(new URL('tackstair.html', document.baseURI))
    return response.ok ? await response.text() : null
  } catch (error) {
    if (error instanceof TypeError) return null
    throw error
  }
}

/** Elements whose content is no markup, and those that have none. */
const raw = ['script', 'style', 'noscript']
const empty = ['meta', 'link']

function pageIn({ head, body, childNodes }: Document): string {
  const comments = [...childNodes].filter((node) => node.nodeType === Node.COMMENT_NODE)
  const notices = comments.map((node) => `\n<!--${node.nodeValue ?? ''}-->\n`).join('')
  const own = [...head.childNodes].filter((node) => !(node instanceof HTMLElement && 'visit' in node.dataset))
  const script = body.querySelector('noscript')
  return [
    '<!doctype html>\n<html lang="en">\n  <head>',
    ...own.map(written),
    '</head>\n  <body>\n    ',
    script ? written(script) : '',
    '\n  </body>\n</html>\n',
    notices,
  ].join('')
}

function written(node: Node): string {
  if (!(node instanceof Element)) return node.nodeValue ?? ''
  const name = node.localName
  const attributes = [...node.attributes].map(({ name: key, value }) =>
    value === '' ? ` ${key}` : ` ${key}="${value.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}"`,
  )
  const open = `<${name}${attributes.join('')}>`
  if (empty.includes(name)) return open
  const text = node.textContent
  return `${open}${raw.includes(name) ? text : text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</${name}>`
}
