/** Headings of tables that are saved as CSV, in Spanish; units are added behind them. */
import type { tables as english } from '../en/tables.ts'
import type { Translated } from '../translated.ts'

export const tables: Translated<typeof english> = {
  'tables.unit': 'cuerpo',
  'tables.ink': 'tinta',
  'tables.tack': 'tiro',
  'tables.tackUnits': 'unidades de tiro',
  'tables.film': 'película en el rodillo dador',
  'tables.coverage': 'cobertura',
  'tables.temperature': 'temperatura',
  'tables.dampening': 'mojado (1 es lo normal)',
  'tables.soiled': 'tinta ajena en la reserva al empezar',
  'tables.foreign': 'tinta ajena en la reserva',
  'tables.earlier': 'primera tinta',
  'tables.later': 'tinta encima',
  'tables.massTrap': 'atrapado en peso',
  'tables.patch': 'parche',
  'tables.paper': 'papel',
  'tables.filmOf': 'película de {ink}',
  'tables.torn': 'papel arrancado',
  'tables.density': 'densidad status {status}, filtro {filter}, menos papel',
  'tables.lightness': 'L*',
  'tables.a': 'a*',
  'tables.b': 'b*',
}
