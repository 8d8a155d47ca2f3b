/**
 * Lets the page of a cmi5 package connect to the store and the token's address named at the launch, and to nothing else.
 * Its own policy cannot name them; a further one holds beside it, and what either forbids is forbidden.
 */
export function connectOnlyTo(addresses: readonly string[]): void {
  const origins = [...new Set(addresses.map((address) => new URL(address).origin))]
  const meta = document.createElement('meta')
  meta.httpEquiv = 'Content-Security-Policy'
  meta.content = `connect-src ${origins.join(' ')}`
  meta.dataset['visit'] = ''
  document.head.append(meta)
}
