/** What can be wrong with a link, and what is done instead, in Spanish; see the English one for what is filled in. */
import type { link as english } from '../en/link.ts'
import type { Translated } from '../translated.ts'

const what = `{field, select,
  tack {el tiro} film {la película} cover {la cobertura} temp {la temperatura} water {el mojado}
  soiled {la parte de tinta ajena} dry {si el pliego llega seco} lab {el color} rgb {el color}
  strength {la resistencia superficial} absorb {la absorción} even {la uniformidad} rate {la rapidez de contacto}
  hold {el límite de retención} free {la división libre} gain {la ganancia por fijado} time {el tiempo de fijado}
  wet {la pérdida en húmedo} speed {la velocidad} interval {el tiempo entre cuerpos} waterless {si va sin agua}
  name {el nombre} seed {la semilla} sheet {el pliego} unit {el cuerpo que se mira} patch {los cuerpos que imprimen}
  drill {el número del caso}
  other {{field}}}{of, select, ink { de {name}} paper { del papel} press { de la máquina} other {}}`
const usedInstead = '{used, select, none {Se omite.} other {En su lugar se usa {used}.}}'
const nearest = '{near, select, none {} other { (¿querías decir {near}?)}}'

export const link: Translated<typeof english> = {
  'link.tooLong':
    'El enlace tiene {length, number} caracteres; los de este programa tienen {most, number} como mucho. Solo se lee el principio.',
  'link.newer':
    'El enlace se hizo con una versión más nueva de este programa (formato {given}; este lee el formato {known}). Se muestra lo que se entiende de él.',
  'link.version': 'El enlace da «{given}» como versión de su formato; se admite {known}. Se lee como si fuera esa.',
  'link.twice': 'El enlace da {word} dos veces; se usa la primera.',
  'link.unknownWord': `El enlace lleva «{given}», que aquí no se conoce${nearest}; se admite {allowed}. Se omite.`,
  'link.unknownPart': `El enlace lleva «{given}» {of, select, ink {en la tinta {name}} paper {en el papel} other {en la máquina}}, que allí no se conoce${nearest}; se admite {allowed}. Se omite.`,
  'link.number': `El enlace da «{given}» para ${what}; se admiten números {whole, select, yes {enteros } other {}}de {least} a {most}{unit, select, none {} other { {unit}}}. ${usedInstead}`,
  'link.flag': `El enlace da «{given}» para ${what}; se admite yes o no. ${usedInstead}`,
  'link.name': `El enlace da «{given}» para ${what}; se admite un texto de 1 a {most} caracteres en una línea, sin la palabra «on» suelta. ${usedInstead}`,
  'link.lab': `El enlace da «{given}» para ${what}; se admite L/a/b, como 60/-20/35, con L de 0 a 100, a y b de -150 a 150. ${usedInstead}`,
  'link.rgb': `El enlace da «{given}» para ${what}; se admiten seis cifras hexadecimales, como e3711b. ${usedInstead}`,
  'link.choice': `El enlace da «{given}» para {word}${nearest}; se admite {allowed}. ${usedInstead}`,
  'link.list': `El enlace da «{given}» para {word}${nearest}; se admite {allowed}. Esa parte se omite.`,
  'link.id':
    'El enlace da «{given}» para {word}; se admiten minúsculas y cifras en palabras unidas por guiones. Se omite.',
  'link.units': `El enlace da «{given}» para ${what}; se admiten cuerpos de esta máquina, de 1 a {most}. ${usedInstead}`,
  'link.scene':
    'El enlace da «{given}» para la escena de la clase; se admiten números enteros de 1 a {most}. Se omite.',
  'link.inkName':
    'El enlace da «{given}» como nombre de la tinta {unit}; se admite un texto de 1 a {most} caracteres en una línea, sin la palabra «on» suelta. Se llama {used}.',
  'link.sameName':
    'El enlace da a dos tintas el nombre {given}; cada tinta necesita un nombre propio. La segunda se llama {used}.',
  'link.tooFewInks':
    'El enlace da {count, plural, =0 {cero tintas} one {una tinta} other {# tintas}}; se admiten de {least} a {most}. Se cargan las cuatro de siempre.',
  'link.tooManyInks':
    'El enlace da {count, number} tintas; se admiten de {least} a {most}. Las que vienen después de la {most} se omiten.',
  'link.measures':
    'No se han podido traer las unidades de medida que pide el enlace; los números siguen en las habituales. Carga la página otra vez cuando vuelva la conexión.',
}
