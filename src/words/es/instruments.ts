/** The tackmeter, the pick test, the wet-on-wet proof and the noise of readings, in plain Spanish. */
import type { instruments as english } from '../en/instruments.ts'
import type { Translated } from '../translated.ts'

export const instruments: Translated<typeof english> = {
  'tackmeter.what':
    'Un medidor de tiro extiende la tinta sobre tres rodillos en marcha y lee la fuerza que cuesta dividirla. Esa lectura es el tiro de la tinta.',
  'tackmeter.scale':
    'La escala es la del propio instrumento. Dos instrumentos dan dos números para la misma tinta, y no hay regla para pasar de uno a otro.',
  'tackmeter.instrument.laboratory': 'Medidor de laboratorio: el que está detrás de los valores de tiro de la máquina',
  'tackmeter.instrument.workshop': 'Medidor de taller: otros rodillos, otra escala',
  'tackmeter.standard':
    'Condición normalizada: {volume, number, ::.00} ml de tinta, {temperature, number, ::.0} °C, {speed, number} rpm, lectura a los {seconds, number} s.',
  'tackmeter.volume': 'Tinta dosificada, ml',
  'tackmeter.temperature': 'Rodillos, °C',
  'tackmeter.speed': 'Rodillo principal, rpm',
  'tackmeter.surface': 'Velocidad superficial {speed, number, ::.00} m/s',
  'tackmeter.film': 'Película en los rodillos {film, number, ::.0} µm',
  'tackmeter.evaporated': 'se ha evaporado el {share, number, ::percent} del disolvente',
  'tackmeter.reading': 'Lectura {reading, number, ::.0} unidades de tiro de este instrumento',
  'tackmeter.repeats':
    'Las lecturas se repiten a {deviation, number, ::.0} unidades de tiro de este instrumento (desviación típica, elegida).',
  'tackmeter.average':
    'Media de {count, plural, one {# lectura} other {# lecturas}}: {mean, number, ::.00} unidades de tiro, error típico {error, number, ::.00} unidades de tiro.',
  'tackmeter.conversion':
    'Una tinta de tiro 1 tira {factor, number, ::.000} unidades de tiro en estas condiciones; en la referencia de la máquina, 2 m/s, 2 µm y 25 °C, tira 1 unidad de tiro.',
  'tackmeter.drying': 'Si se deja en marcha, la tinta se seca en los rodillos y la lectura sube y sube: lee al minuto.',
  'tackmeter.exercise.read': 'Lee esta tinta en la condición normalizada y anota su tiro.',
  'tackmeter.exercise.grade': 'Lee estas tintas y ponlas en el orden en que deben imprimirse.',
  'tackmeter.exercise.web': '¿Con cuánto tira esta tinta a {speed, number} m/s? Ponla a esa velocidad y lee.',

  'pickTest.what':
    'Se imprime una tira de papel con un aceite pegajoso, cada vez más deprisa. Donde su superficie empieza a romperse, el aceite tira tanto como aguanta el papel.',
  'pickTest.notPressSpeed':
    'Una velocidad de arrancado no es una velocidad de máquina. Aceite, película y línea de contacto no son los de una máquina: un papel que aquí se arranca a 2 m/s puede ir bien allí a 10 m/s.',
  'pickTest.oil.low': 'Aceite de baja viscosidad, {viscosity, number, ::.0} Pa s',
  'pickTest.oil.medium': 'Aceite medio, {viscosity, number, ::.0} Pa s',
  'pickTest.oil.high': 'Aceite de alta viscosidad, {viscosity, number, ::.0} Pa s',
  'pickTest.endVelocity': 'Velocidad al final de la tira, m/s',
  'pickTest.wet': 'Humedecer antes la tira',
  'pickTest.mark': 'Marca dónde empieza el arrancado: desde donde está arrancado más o menos un punto de cada veinte.',
  'pickTest.resistance':
    'Resistencia al arrancado = {velocity, number, ::.00} m/s × {viscosity, number, ::.0} Pa s = {resistance, number, ::.0} N/m',
  'pickTest.strength':
    'En el modelo de la máquina este papel tiene una resistencia superficial de {strength, number, ::.0} unidades de tiro.',
  'pickTest.verdict.right': 'Correcto: aquí empieza el arrancado.',
  'pickTest.verdict.too early':
    'Demasiado pronto: hay puntos sueltos que se rompen por azar antes de que empiece el arrancado.',
  'pickTest.verdict.too late': 'Demasiado tarde: el arrancado ha empezado antes de este sitio.',
  'pickTest.verdict.nothing picks':
    'En esta tira no empieza el arrancado. Toma un aceite más pegajoso o una velocidad mayor.',
  'pickTest.verdict.rightly none':
    'Correcto: en esta tira no empieza el arrancado. Toma un aceite más pegajoso o una velocidad mayor.',

  'proof.what':
    'Se imprimen dos tintas en una tira, la segunda mientras la primera está húmeda. Pesando tira y formas se sabe cuánto de la segunda tinta se quedó.',
  'proof.ratio':
    'Proporción de atrapado en peso = peso ganado sobre tinta húmeda / peso ganado sobre papel seco = {wet, number, ::.0} mg / {dry, number, ::.0} mg = {ratio, number, ::percent}',
  'proof.limit':
    'Una balanza no sabe de quién es la tinta que pesa. Si la segunda forma levanta algo de la primera tinta, la tira gana menos, y la proporción sale más baja que el atrapado propio de la segunda tinta.',
  'proof.swap': 'Imprimirlas al revés',
}
