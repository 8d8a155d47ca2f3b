/** The first ten seconds, in Spanish. */
import type { firstLook as english } from '../en/first-look.ts'
import type { Translated } from '../translated.ts'

export const firstLook: Translated<typeof english> = {
  'first.before':
    'Este pliego lleva una película de {first}, aún húmeda. Una mantilla de caucho va a apretar {second} encima y a separarse.',
  'first.after':
    '{share, select, most {Casi todo el} part {Parte del} other {Poco del}} {second} se quedó: {stayed} de lo que deja sobre papel desnudo. Se llevó del pliego {lifted} del {first} húmedo.',
  'first.print': 'Imprimir {second} encima',
  'first.swap': 'Cambiar las dos tintas y volver a imprimir',
  'first.open': 'Abrir el banco',
  'first.why': '¿Por qué?',
  'first.skip': 'Ir al banco',
}
