/** All properties are tried on the same cases in every run; TACKSTAIR_SEED gives others. */
import fc from 'fast-check'

fc.configureGlobal({ seed: Number(process.env['TACKSTAIR_SEED'] ?? 20260302) })
