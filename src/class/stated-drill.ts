/** A fault drill as its statements tell it: what was hidden, and what was named each time. */
import { allCauses, causeKey } from '../drill/cause.ts'
import { readDrill, writeDrill } from '../drill/link.ts'
import { extensionIds } from '../session/statement-extensions.ts'
import type { HandedDrill } from './roll.ts'
import type { Statement } from './statement.ts'
import { activeIn } from './statement.ts'

/** Statements name causes by small letters, digits and hyphens. */
const keys = new Map(allCauses(8).map((cause) => [causeKey(cause).replaceAll(' ', '-'), causeKey(cause)]))

/** `answers` in the order of their moments; null where it is no drill of ours. */
export function statedDrill(code: string, answers: readonly Statement[]): HandedDrill | null {
  const [level, seed] = code.split('-')
  const request = readDrill(`${level}-${seed}`)
  if (!request || answers.length === 0) return null
  const named = answers.map(({ timestamp: at, result }) => {
    const { [extensionIds.worth]: stated, [extensionIds.evidenceNamed]: evidence = [] } = result.extensions
    // Without the extension, an answer that was proven and one that was only right look alike.
    const worth = stated ?? (result.success === true ? ('found' as const) : ('missed' as const))
    return { at, causes: causesIn(result.response), evidence, worth }
  })
  const hidden = causesIn(answers[0].object.definition.correctResponsesPattern.at(0))
  const last = answers[answers.length - 1].result.extensions
  const measured = last[extensionIds.evidenceAsked] ?? []
  const active = activeIn(answers)
  return {
    drill: writeDrill(request),
    first: named[0].worth,
    tries: named.length,
    cured: false,
    way: { active, hidden, offered: hidden, named, measured, cures: [] },
  }
}

function causesIn(response = ''): string[] {
  return response.split('[,]').flatMap((part) => keys.get(part) ?? [])
}
