/**
 * Finds the object through which a SCORM system is spoken with: in the windows this page stands in, one above the other,
 * and then in those of the page that opened it (SCORM 1.2 Run-Time Environment 3.3.6.1; SCORM 2004 4th ed. RTE 3.3.1).
 */
type Frame = Pick<Window, 'parent' | 'opener'>

export function findApi(frame: Frame, name: string, hops: number): Record<string, unknown> | null {
  const above = upwards(frame, name, hops)
  if (above) return above
  const opener = reach(frame, 'opener')
  return opener ? upwards(opener, name, hops) : null
}

function upwards(start: Frame, name: string, hops: number): Record<string, unknown> | null {
  let frame: Frame | null = start
  for (let hop = 0; frame && hop <= hops; hop++) {
    const api = look(frame, name)
    if (api) return api
    const parent = reach(frame, 'parent')
    frame = parent === frame ? null : parent
  }
  return null
}

function reach(frame: Frame, way: 'parent' | 'opener'): Frame | null {
  return (look(frame, way) ?? null) as Frame | null
}

/** A window of another origin throws when it is looked into: there is nothing for us then. */
function look(frame: Frame, name: string): Record<string, unknown> | null {
  try {
    const found: unknown = (frame as unknown as Record<string, unknown>)[name]
    return typeof found === 'object' && found !== null ? (found as Record<string, unknown>) : null
  } catch (error) {
    if (isRefusal(error)) return null
    throw error
  }
}

function isRefusal(error: unknown): boolean {
  return error instanceof DOMException || (error instanceof Error && error.name === 'SecurityError')
}
