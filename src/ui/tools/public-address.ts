/** Where others find this page: its own address on the web, or for a page opened from a file the one a person gives. */
import { addressOf } from '../../report/qr-picture.ts'
import { browserStorage } from '../browser-storage.ts'

const key = 'tackstair public address'

/** Whether the page itself stands on the web. */
export function isOnWeb(): boolean {
  return addressOf(location.href, '') !== null
}

/** The address that was given last; empty where none was. */
export function givenAddress(): string {
  try {
    return browserStorage()?.getItem(key) ?? ''
  } catch (error) {
    if (error instanceof DOMException) return ''
    throw error
  }
}

/** Remembers it, where the browser keeps anything. */
export function giveAddress(address: string): void {
  try {
    browserStorage()?.setItem(key, address)
  } catch (error) {
    // It is asked for again next time.
    if (!(error instanceof DOMException)) throw error
  }
}
