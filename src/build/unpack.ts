/** Runs in the page of the single file: the way back from what pack.ts made. */
import { inflateSync, strFromU8 } from 'fflate'

export function unpack(base64: string): string {
  const packed = atob(base64)
  const bytes = new Uint8Array(packed.length)
  for (let at = 0; at < packed.length; at++) bytes[at] = packed.charCodeAt(at)
  return strFromU8(inflateSync(bytes))
}
