/** The run chart in Spanish. [[term|word]] marks a word that the glossary explains. */
import type { run as english } from '../en/run.ts'
import type { Translated } from '../translated.ts'

export const run: Translated<typeof english> = {
  'run.title': 'Gráfico de la tirada',
  'run.intro':
    'Una tirada entera con la máquina tal como está, desde el primer pliego: cómo cambian la [[contamination|contaminación]], el [[mass-trap|atrapado en peso]] y el color, y qué hace una parada o un lavado. Planchas y mantillas empiezan vacías, como después del arreglo.',
  'run.sheets': 'Longitud de la tirada',
  'run.sheetsUnit': 'pliegos',
  'run.start': 'Hacer la tirada',
  'run.running': '{percent} % de la tirada hecho',
  'run.cancel': 'Cancelar',
  'run.done': '{sheets, number} pliegos tirados; {rows, number} de ellos leídos.',
  'run.before': 'Lo que mostrará una tirada',
  'run.beforeHow':
    'Pon la máquina en marcha y aquí se dibuja una línea por cuerpo: cuánta tinta ajena hay en su reserva, pliego a pliego. Debajo siguen el atrapado de dos tintas y el color del pliego.',
  'run.beforePicture':
    'Un gráfico vacío: tinta ajena en porcentaje a lo largo de {sheets, number} pliegos. No se dibuja nada antes de una tirada.',
  'run.none': 'Ninguna tirada todavía.',
  'run.stale':
    'La configuración o los sucesos han cambiado desde entonces. Esta es la tirada de antes; hazla otra vez.',

  'run.events': 'Qué pasa por el camino',
  'run.eventsNone': 'Por el camino no pasa nada: la máquina va seguida.',
  'run.eventKind': 'Qué pasa',
  'run.event.stop': 'parada, o nuevo arreglo',
  'run.event.wash-up': 'lavado de un cuerpo',
  'run.event.ink change': 'tinta modificada en su tintero',
  'run.explain.stop':
    'Se limpian las planchas y las mantillas de todos los cuerpos; la tinta de las reservas se queda como está. La tinta que se fija en los rodillos y los rodillos que se enfrían no están en el modelo.',
  'run.explain.wash-up':
    'La reserva del cuerpo vuelve a tener solo su propia tinta; su plancha y su mantilla están vacías.',
  'run.explain.ink change':
    'Desde este pliego, la tinta de un cuerpo tiene otro tiro u otra película, toda ella a la vez.',
  'run.beforeSheet': 'Antes del pliego',
  'run.unit': 'Cuerpo',
  'run.unitNamed': '{unit} {name}',
  'run.changeWhat': 'Se modifica',
  'run.change.tack': 'tiro',
  'run.change.film': 'película',
  'run.changeTo': 'A',
  'run.unitOf.tack': 'unidades de tiro',
  'run.unitOf.film': 'µm',
  'run.add': 'Añadir',
  'run.remove': 'Quitar: {event}',
  'run.removeShort': 'Quitar',
  'run.told.stop': 'Antes del pliego {sheet, number}: parada',
  'run.told.wash-up': 'Antes del pliego {sheet, number}: lavado de {ink}',
  'run.told.ink change': 'Antes del pliego {sheet, number}: {what} de {ink} pasa a {value} {unit}',
  'run.beyond': '(después del final de esta tirada)',

  'run.chart': 'Qué se muestra',
  'run.scale': 'Pliegos en el eje de abajo',
  'run.scale.even': 'por igual',
  'run.scale.early': 'los primeros, ensanchados',
  'run.at': 'En el pliego {sheet, number}: {values}.',
  'run.value.percent': '{label} {value} %',
  'run.value.plain': '{label} {value}',
  'run.contamination': 'Tinta ajena en la reserva de cada cuerpo',
  'run.traps': 'Atrapado en peso de {later} sobre cada tinta anterior',
  'run.colour': 'Diferencia de color con el objetivo {aim}',
  'run.contaminationAxis': 'tinta ajena, %',
  'run.trapsAxis': 'atrapado en peso, %',
  'run.colourAxis': 'ΔE00',
  'run.sheetAxis': 'pliego',
  'run.noColour':
    'Ningún parche de estas tintas tiene un objetivo publicado en este papel, así que no se puede decir ninguna diferencia de color.',
  'run.laterInk': 'Atrapado de',
  'run.patch': 'Parches',
  'run.patch.solids': 'masas',
  'run.patch.overprints': 'sobreimpresiones de dos tintas',
  'run.patch.all': 'media y peor de todos los parches',
  'run.mean': 'media',
  'run.worst': 'peor',
  'run.onShort': 'sobre {earlier}',
  'run.onInk': '{later} sobre {earlier}',
  'run.picture': '{what}, del pliego {first} al {last}. La tabla de abajo dice lo mismo en números.',

  'run.marker': 'Pliego que se mira',
  'run.markerHint': 'Arrastra la línea gruesa del gráfico, o usa aquí las flechas.',
  'run.markerValue': 'pliego {sheet, number}',
  'run.see': 'Ver el pliego {sheet, number} en el banco',
  'run.seenWithout':
    'El banco no conoce sucesos: imprime el pliego {sheet, number} de una tirada en la que no pasó nada. En esta hubo antes {events}, así que sus números no son los del gráfico.',
  'run.eventsBefore': '{count, plural, one {# suceso} other {# sucesos}}',
  'run.seenStale':
    'La configuración ha cambiado desde entonces; el banco imprime el pliego {sheet, number} de la configuración de ahora.',

  'run.table': 'La tirada en una tabla',
  'run.tableHint': 'Los pliegos leídos: muy seguidos donde las cosas cambian deprisa.',
  'run.sheet': 'pliego',
  'run.picking': 'papel arrancado en el peor parche, %',
  'run.csvContamination': 'tinta ajena en la reserva de {name}',
  'run.csvTrap': 'atrapado en peso de {later} sobre {earlier}',
  'run.csvPicking': 'papel arrancado en el peor parche',
  'run.dE00Of': 'ΔE00 de {patch}',
  'run.eventColumn': 'suceso antes de este pliego',
  'run.csv': 'Guardar todas las columnas como CSV',
}
