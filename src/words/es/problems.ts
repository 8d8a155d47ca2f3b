import type { problems as english } from '../en/problems.ts'
import type { Translated } from '../translated.ts'

const given =
  '{given, select, nothing {nada} null {null} list {una lista} object {un objeto} symbol {un símbolo} other {{given}}}'
const whole =
  '{what, select, ink {una tinta} paper {un papel} press {una máquina} reading {una lectura} other {una configuración}}'
const range =
  '{whole, select, yes {números enteros} other {números}} de {least} a {most}{unit, select, none {} other { {unit}}}'
const part =
  '{what, select, view {una vista} scene {una escena} second {una segunda configuración} row {una fila de lecturas} trial {un ensayo} readings {un archivo de lecturas} settings {los ajustes} other {un archivo}}'
const items = '{what, select, scenes {escenas} trials {ensayos} rows {filas} lessons {lecciones} other {cosas}}'
const nearest = '{near, select, none {} other {; ¿querías decir {near}?}}'

export const problems: Translated<typeof english> = {
  'problem.kept': 'La lección deja esto como está; puedes usar los controles que no están en gris.',
  'problem.number': `${given} no vale aquí; valen ${range}`,
  'problem.flag': `${given} no vale aquí; valen true y false`,
  'problem.choice': `${given} no es {what, select, paper {ningún papel} other {ningún tipo de máquina}}; valen {allowed}${nearest}`,
  'problem.name': `${given} no sirve de nombre; vale un texto de 1 a {most} caracteres en una sola línea, sin la palabra "on" suelta`,
  'problem.colour': `${given} no es ningún color; valen "#rrggbb" y [L, a, b] con L de 0 a 100, a y b de -150 a 150`,
  'problem.object': `${given} no vale aquí; ${whole} es un objeto con {allowed}`,
  'problem.missing': `falta; ${whole} lo necesita`,
  'problem.unknown': `aquí no se conoce{near, select, none {} other { (¿querías decir {near}?)}}; valen {allowed}`,
  'problem.reading': `${given} no es ninguna lectura; valen "first", "settled" y '{'"sheet": N'}', con N ${range}`,
  'problem.inks': `${given} no vale aquí; vale una lista de tintas en el orden de los cuerpos`,
  'problem.inkCount':
    '{count, plural, one {1 tinta no puede ser} other {{count} tintas no pueden ser}}; pueden ser de {least} a {most}',
  'problem.noUnit': 'no hay cuerpo {given}; valen números enteros de 1 a {most}',
  'problem.loadedAlready': '{given} ya está cargada; cada tinta necesita un nombre propio',

  'problem.ranking.aim':
    'no es ningún objetivo; valen {allowed}, null si no hay ninguno, y un objeto con colours (uno de estos) y overprints (una lista de listas de dos o más nombres de tintas)',
  'problem.ranking.weight': 'no vale aquí; valen números de 0 a {most} para {allowed}',
  'problem.ranking.notLoaded': 'nombra una tinta que no está cargada; están cargadas {allowed}',
  'problem.ranking.twice': 'nombra una tinta dos veces; una tinta imprime una sola vez en cada punto',

  'problem.event.number': `no vale aquí; valen ${range}`,
  'problem.event.kind': 'no es ningún suceso; valen {allowed}',
  'problem.event.name': 'no es el nombre de ninguna tinta',
  'problem.event.list': 'no vale aquí; vale una lista de sucesos',
  'problem.event.tooMany': 'tiene demasiados sucesos; caben hasta {most}',
  'problem.event.field': 'falta, o aquí no se conoce',
  'problem.event.ink': 'no es ninguna tinta cargada; están cargadas {allowed}',
  'problem.event.nothing': 'no cambia nada; indica tack, film, temperature o dampening',

  'problem.shelf.text': 'no sirve de nombre; vale un texto',
  'problem.shelf.name': 'no sirve de nombre; vale un texto de 1 a {most} caracteres, sin la palabra "on" suelta',
  'problem.shelf.list': 'no es ninguna lista; vale una lista',
  'problem.shelf.tooMany': 'tiene demasiadas entradas; caben {most}',
  'problem.shelf.unknown': 'aquí no se conoce; valen {allowed}',
  'problem.shelf.missing': 'falta',
  'problem.shelf.object': 'no es ningún objeto; vale uno con {allowed}',
  'problem.shelf.number': 'no es ningún número',
  'problem.shelf.choice': 'no encaja aquí; valen {allowed}',
  'problem.shelf.kind': 'no es ningún estante; vale "{allowed}"',
  'problem.shelf.version': 'no es una versión que este programa lea; vale {allowed}',
  'problem.shelf.tooLarge': 'ocupa más de {most} MB; un estante es mucho más pequeño',
  'problem.shelf.json': 'no es JSON; vale el archivo de un estante tal como se guardó',
  'problem.shelf.supplied': '"{name}" es un papel de serie; un papel propio necesita otro nombre',
  'problem.shelf.twice': '"{name}" ya está en el estante; cada entrada necesita un nombre propio',

  'problem.file.tooLong': 'El archivo tiene {count} caracteres; caben {most}.',
  'problem.file.json': 'El archivo no es JSON; vale un archivo guardado por este programa.',
  'problem.file.noObject': 'El archivo no contiene ningún objeto; vale un archivo guardado por este programa.',
  'problem.file.format': `${given} no es ningún formato de este programa; vale "{allowed}".`,
  'problem.file.version': `${given} no es ninguna versión; valen números enteros hasta {most}.`,
  'problem.file.newer':
    'El archivo es de la versión {version}, hecha con una versión más nueva de este programa; esta lee archivos hasta la versión {most}.',
  'problem.file.neverWas': 'Nunca hubo una versión {version} de este archivo; vale la {most}.',
  'problem.file.tooLarge': 'Ocupa {size, number} kB; se admiten {most, number}.',
  'problem.file.unreadable': 'El navegador no ha podido leerlo: {reason}',
  'problem.file.object': `${given} no vale aquí; ${part} tiene los campos {allowed}`,
  'problem.file.field': `{given} no es ningún campo de ${part} y se omite; valen {allowed}${nearest}`,
  'problem.file.list': `${given} no vale aquí; vale una lista de ${items}`,
  'problem.file.tooMany': `{count} ${items} sobran: caben {most}, y se omite lo que sigue`,
  'problem.file.text': 'no es ningún texto',
  'problem.file.longText': 'tiene más de {most} caracteres',
  'problem.file.drill': 'no es ningún caso; vale uno con level y seed',
  'problem.file.sceneNumber': 'no es ningún número de una escena; vale uno con of, ink y below',
  'problem.file.progress': 'no es ningún progreso; vale uno con una lección',
  'problem.file.deep': 'no es ningún progreso; valen hasta {most} niveles y números que JSON pueda escribir',
  'problem.file.noSetUp': 'falta; no se puede mostrar sin su configuración',
}
