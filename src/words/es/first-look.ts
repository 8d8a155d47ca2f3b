/** The first ten seconds, in Spanish. */
import type { firstLook as english } from '../en/first-look.ts'
import type { Translated } from '../translated.ts'

export const firstLook: Translated<typeof english> = {
  'first.before':
    'Este pliego lleva una película de {first}, aún húmeda. Una mantilla de caucho va a apretar {second} encima y a separarse.',
  'first.after':
    '{share, select, most {La película de {second} se partió por la mitad, como siempre: una mitad volvió con la mantilla y la otra se quedó. Es} part {Solo en algunos sitios se partió la película de {second}; en los demás volvió entera con la mantilla. El pliego recibió} other {Solo en pocos sitios se partió la película de {second}; en los demás volvió entera con la mantilla. El pliego recibió}} {stayed} de lo que recibiría el papel desnudo. Del {first}, la mantilla se llevó {lifted}.',
  'first.inks':
    'Primero {first}, tiro {firstTack}, que es {falls, select, true {alto} other {bajo}}. Después {second}, tiro {secondTack}, que es {falls, select, true {bajo} other {alto}}. El tiro es la resistencia de una tinta húmeda a que la separen en dos.',
  'first.scale':
    'Dibujado mucho más alto de lo que es: 1 µm es una milésima de milímetro. Rayada, bajo el 0: tinta que el papel ha tomado.',
  'first.because':
    'Al separarse la mantilla, se parte la película que menos resiste. Aquí el {second}, arriba, resistía más que el {first}, debajo: por eso cedió el {first}, y el {second} se fue con él.',
  'first.lesson': 'Empezar desde el principio: lección 1',
  'first.print': 'Imprimir {second} encima',
  'first.swap': 'Cambiar las dos tintas y volver a imprimir',
  'first.open': 'Abrir el banco',
  'first.why': '¿Por qué?',
  'first.skip': 'Saltar esto y probar tintas',
}
