/**
 * Trusted types (W3C): with them on, no text becomes markup or the address of a script unless a named policy lets it. The
 * template library has a policy of its own; this is the only other one, asked wherever text is about to become either. It
 * makes no markup at all, and lets through the scripts that the page itself starts: its workers and what keeps it offline.
 */

/** Where the page's own scripts lie, seen from the page. */
const ownFiles = /^(assets\/[\w-]+\.js|sw\.js)$/

/** Whether this is the address of a script of this page: a file beside it, or in the single file a text it made itself. */
export function isOwnScript(address: string, page: string, inOneFile: boolean): boolean {
  const { href, protocol } = new URL(address, page)
  if (inOneFile) return protocol === 'blob:'
  const folder = new URL('./', page).href
  return href.startsWith(folder) && ownFiles.test(href.slice(folder.length))
}

/** Called before anything starts a script; a browser without trusted types goes without. */
export function startOnlyOwnScripts(inOneFile: boolean): void {
  const { trustedTypes } = globalThis as {
    trustedTypes?: {
      createPolicy: (name: string, rules: { createScriptURL: (address: string) => string | null }) => void
    }
  }
  trustedTypes?.createPolicy('default', {
    createScriptURL: (address) => (isOwnScript(address, document.baseURI, inOneFile) ? address : null),
  })
}
