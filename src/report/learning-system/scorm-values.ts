/** Values as the two SCORM standards write them. */

/** A plain decimal without an exponent, of at most so many places. */
export function decimal(value: number, places = 2): string {
  if (!Number.isFinite(value)) return '0'
  // Above 1e21 toFixed falls back to an exponent.
  const within = Math.min(1e15, Math.max(-1e15, value))
  const text = within.toFixed(places).replace(/\.?0+$/, '')
  return text === '-0' ? '0' : text
}

/** s as SCORM 1.2's CMITimespan, HHHH:MM:SS.SS. */
export function timespan(seconds: number): string {
  const hundredths = Math.round(Math.min(Math.max(0, seconds), 9999 * 3600) * 100)
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0')
  const hours = String(Math.floor(hundredths / 360_000)).padStart(4, '0')
  return `${hours}:${two((hundredths / 6000) % 60)}:${two((hundredths / 100) % 60)}.${two(hundredths % 100)}`
}

/** ms since 1970 as SCORM 1.2's CMITime, the time of day. */
export function timeOfDay(at: number): string {
  return new Date(at).toISOString().slice(11, 19)
}

/** ms since 1970 as a time of SCORM 2004, in whose form a time zone follows a fraction of a second and nothing else. */
export function moment(at: number): string {
  return `${new Date(at).toISOString().slice(0, 22)}Z`
}

/** s as an ISO 8601 duration with hundredths: timeinterval(second,10,2) of SCORM 2004, Duration of xAPI. */
export function duration(seconds: number): string {
  const hundredths = Math.round(Math.max(0, seconds) * 100)
  const hours = Math.floor(hundredths / 360_000)
  const minutes = Math.floor((hundredths % 360_000) / 6000)
  const rest = decimal((hundredths % 6000) / 100)
  return `PT${hours > 0 ? `${hours}H` : ''}${minutes > 0 ? `${minutes}M` : ''}${rest}S`
}
