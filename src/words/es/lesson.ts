/** What a lesson says about the bench while it is being done, in Spanish. */
import type { lesson as english } from '../en/lesson.ts'
import type { Translated } from '../translated.ts'

export const lesson: Translated<typeof english> = {
  'lesson.within':
    '{reading}: {value, number, ::.##} {unit}. Es {side, select, under {poco} other {demasiado}}; tiene que ser {aim, number, ::.###} {unit}{margin, select, small {} other {, con un margen de {tolerance, number, ::.###}}}.',
  'lesson.atLeast':
    '{reading}: {value, number, ::.##} {unit}. Es poco; tiene que ser {aim, number, ::.###} {unit} como mínimo.',
  'lesson.atMost':
    '{reading}: {value, number, ::.##} {unit}. Es demasiado; tiene que ser {aim, number, ::.###} {unit} como máximo.',
  'lesson.notAfter':
    'Para leer {reading}, {later} tiene que imprimirse después de {earlier}. En el banco se imprime antes.',
  'lesson.notOnPress': 'Para leer {reading}, {missing} tiene que estar en la máquina. No está.',
  'lesson.noColour': 'El banco no puede dar {reading}: no conoce el color de una tinta de este parche.',
  'lesson.noFilm': 'El banco no puede dar {reading}: ahí no puede ceder ninguna película de esa tinta.',
  'lesson.noApparentTrap': 'El banco no puede dar {reading}: las densidades de estos parches no lo dicen.',
  'lesson.order': 'Las tintas se imprimen en el orden {now}. Tienen que imprimirse en el orden {aim}.',
  'lesson.patch':
    'Ahora {printing, plural, one {imprime} other {imprimen}} {now} en el parche que miras. Elige el parche en el que {asked, plural, one {solo imprime {aim}} other {imprimen {aim}}}.',
  'lesson.paper': 'El papel es {now}. Tiene que ser {aim}.',
  'lesson.kind': 'La máquina es {now}. Tiene que ser {aim}.',
  'lesson.waterless': 'La máquina es {now}. Tiene que ser {aim}.',
  'lesson.sheet': 'El pliego que se mira es: {now}. Tiene que ser: {aim}.',
  'lesson.answer': 'Todavía no es eso.',
  'lesson.sequence':
    '{right, plural, =0 {Lo de arriba todavía no va ahí.} one {Lo de arriba está bien. Mira otra vez lo que viene después.} other {Los # primeros están bien. Mira otra vez lo que viene después.}}',
  'lesson.proof':
    'Tienes la causa.{surplus, plural, =0 {} one { Una de las pruebas que marcaste está como debe y no demuestra nada.} other { # de las pruebas que marcaste están como deben y no demuestran nada.}}{missing, plural, =0 {} one { Falta una prueba que la demuestra.} other { Faltan # pruebas que la demuestran.}}',
  'lesson.number': 'El banco da otro número para {reading}. Léelo otra vez, con el banco tal como está ahora.',
  'lesson.inPercent': 'Tu número es una parte de uno. Se pide {reading} en tanto por ciento, como lo da el banco.',
  'lesson.otherNumber': 'El número que escribiste es {taken}. La pregunta es por {reading}.',

  'lesson.reading.massTrap': 'el atrapado en peso de {of} sobre {on}',
  'lesson.reading.film':
    'la película de {of} {alone, select, yes {donde imprime solo} other {en el parche de {patch}}}',
  'lesson.reading.lifted': 'la parte de {of} que levanta {by}',
  'lesson.reading.picked': 'el papel arrancado{patch, select, none {} other { en el parche de {patch}}}',
  'lesson.reading.contamination': 'la contaminación del cuerpo de {of}',
  'lesson.reading.pull': 'la fuerza de división de la película de {of} en el cuerpo de {by}, en el parche de {patch}',
  'lesson.reading.gaveWay': 'la parte de los puntos en que cedió {of} en el cuerpo de {by}, en el parche de {patch}',
  'lesson.reading.torn':
    'la parte de los puntos en que se rompió el papel en el cuerpo de {by}, en el parche de {patch}',
  'lesson.reading.brought': 'la película de {of} en su mantilla, en el parche de {patch}',
  'lesson.reading.takenUp': 'lo que toma la mantilla de {by}, en el parche de {patch}',
  'lesson.reading.givenBack': 'lo que devuelve la mantilla de {by}, en el parche de {patch}',
  'lesson.reading.density': 'la densidad del parche de {patch} por el filtro {through}',
  'lesson.reading.apparentTrap': 'el atrapado aparente de {of} sobre {on}',
  'lesson.reading.tack': 'el tiro de {of}',
  'lesson.reading.formRollerFilm': 'la película de {of} en el rodillo dador',
  'lesson.reading.coverage': 'la cobertura de {of}',
  'lesson.reading.temperature': 'la temperatura del cuerpo de {of}',
  'lesson.reading.dampening': 'el mojado del cuerpo de {of}',
  'lesson.reading.speed': 'la velocidad de la máquina',
  'lesson.reading.interval': 'el tiempo entre cuerpos',
  'lesson.reading.surfaceStrength': 'la resistencia superficial del papel',
}
