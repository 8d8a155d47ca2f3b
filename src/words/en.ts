/** Every sentence on the page, in English; one file for each part of it. */
import { bench } from './en/bench.ts'
import { nip } from './en/nip.ts'
import { picture } from './en/picture.ts'
import { workings } from './en/workings.ts'

export const en = { ...bench, ...nip, ...picture, ...workings } as const
