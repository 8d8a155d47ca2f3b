/** The panel that shows how everything is computed, and what the model leaves out, in Spanish. */
import type { workings as english } from '../en/workings.ts'
import type { Translated } from '../translated.ts'

export const workings: Translated<typeof english> = {
  'workings.of': 'Cuerpo {unit}, {name}, en el parche que se mira. Todos los números de abajo son los de ahora.',
  'workings.pull': 'Con cuánta fuerza aguanta cada película',
  'workings.pullNote':
    'T valor de tiro (a {speed} m/s, {thickness} µm, {temperature} °C); U velocidad, m/s; θ temperatura, °C; h grosor de la película, µm; s subida por la succión del papel, 1 en la mantilla; w pérdida por el agua; s y w son factores sin unidad. F en unidades de tiro. Una película mezclada lleva la letra de la tinta que más tiene, y la media geométrica de los tiros de sus tintas; un número junto a la letra dice la mantilla de qué cuerpo la dejó.',
  'workings.weakest': 'Qué película se rompe',
  'workings.weakestNote':
    'La resistencia cambia de punto a punto (Weibull, módulo m = {evenness}, sin unidad, la uniformidad del pliego); se rompe primero el plano más débil. p es la parte de los puntos en los que el papel aguanta.',
  'workings.paper': 'Si el papel aguanta',
  'workings.paperNote':
    'F* es la fuerza que llega al papel, S su resistencia superficial aquí, {strength} unidades de tiro. P es la probabilidad de que el papel (módulo {modulus}, sin unidad) sea más débil que la fuerza: P = {torn}.',
  'workings.contact': 'Cuánta superficie se toca',
  'workings.contactNote':
    'k, 1/µm, es del papel; x es la película en la mantilla, h la película húmeda que encuentra, las dos en µm.',
  'workings.amount': 'Cuánta tinta se queda',
  'workings.amountBare':
    'Sobre papel desnudo (Walker y Fetsko, 1955): b es lo más que el papel retiene al momento, f la parte del resto que se queda. Todo en µm.',
  'workings.amountWet':
    'Sobre tinta húmeda la película se divide por la mitad donde es la más débil, y no deja nada donde se rompe una película de debajo. Todo en µm.',
  'workings.amountIdle': 'El cuerpo no imprime nada aquí; su mantilla solo da y toma.',
  'workings.trap': 'Atrapado en peso',
  'workings.trapNote':
    'Película de {later} sobre {earlier}, dividida por su película sobre papel desnudo, las dos en este pliego y en µm. No es el atrapado aparente que da un densitómetro.',
  'workings.limits': 'Lo que el modelo deja fuera',
  'workings.limit.teaching':
    'Es un modelo para aprender: no ajustes con él ninguna máquina. Mandan el fabricante de la máquina, el proveedor de la tinta y las normas de la casa.',
  'workings.limit.numbers':
    'Las constantes se eligieron para que los resultados caigan donde los ve el oficio; no se midió ninguna máquina. Un valor de tiro es de su instrumento y no se compara con el de ningún otro.',
  'workings.limit.setting':
    'Aquí la succión solo puede subir la fuerza de una película. Un estuco muy absorbente empieza en realidad con su fuerza más alta y va bajando.',
  'workings.limit.field':
    'Las lecturas son la media de todos los puntos con películas uniformes; el cuentahílos dibuja cada punto. A lo largo de toda la máquina, los dos difieren en unos pocos puntos, porque las películas se vuelven desiguales.',
  'workings.limit.rest':
    'Queda fuera: los puntos de la trama, la tinta que se extiende hacia los lados, el secado en la pila, el ensanche del papel, las imágenes fantasma y todo lo que se mueve en la batería de entintado además de la película. La contaminación es un índice propio del modelo.',
}
