/** Fault drills, remedies and what they change, in plain Spanish. */
import type { drills as english } from '../en/drills.ts'
import type { Translated } from '../translated.ts'

export const drills: Translated<typeof english> = {
  'drill.intro':
    'Algo va mal en este trabajo. Mira lo que salió de la máquina, mide lo que necesites, nombra la causa y lo que la demuestra, y después arréglalo.',
  'drill.misleading':
    'Una medición engaña: su muestra estuvo abierta o su medidor no se limpió. El pliego mismo no engaña nunca. Por eso, no creas nunca en una causa por una sola medición: el pliego o una prueba de otra clase tiene que coincidir.',
  'drill.twoFaults': 'Aquí actúan dos defectos a la vez.',
  'drill.level.easy': 'Fácil: un defecto grande',
  'drill.level.medium': 'Medio: un defecto, más sospechosos',
  'drill.level.hard': 'Difícil: dos defectos a la vez',

  'drill.job.harvest poster': 'Cartel de la cosecha: cuatro tintas sobre papel estucado, máquina de pliegos',
  'drill.job.seed leaflet': 'Folleto de semillas: cuatro tintas de igual tiro sobre estucado ligero, rotativa',
  'drill.job.delivery note': 'Albarán: cuatro tintas blandas sobre no estucado débil, máquina de pliegos',
  'drill.job.market news': 'Noticias del mercado: cuatro tintas sobre papel prensa, rotativa, negro al final',
  'drill.job.recipe cards': 'Tarjetas de recetas: cuatro tintas sobre estucado, máquina de pliegos, negro al final',
  'drill.job.jam label': 'Etiqueta de mermelada: tres tintas sobre estucado, máquina de pliegos, sin agua',

  'drill.cause.order swapped': '{ink} y {next} están cada una en el cuerpo de la otra',
  'drill.cause.tack too high': '{ink} tiene demasiado tiro',
  'drill.cause.tack too low': '{ink} tiene poco tiro',
  'drill.cause.film too heavy': 'Entra demasiado {ink}',
  'drill.cause.film too thin': 'Entra poco {ink}',
  'drill.cause.water too high': 'Demasiada agua en la máquina',
  'drill.cause.unit too warm': 'El cuerpo de {ink} va demasiado caliente',
  'drill.cause.paper weak': 'La superficie del papel es demasiado débil',
  'drill.cause.paper too closed': 'El papel es demasiado cerrado: absorbe poca tinta',
  'drill.cause.speed too high': 'La máquina va demasiado rápida',
  'drill.cause.interval too short': 'Los cuerpos están demasiado juntos: poco tiempo entre dos tintas',
  'drill.cause.soiled unit': 'El cuerpo de {ink} está sucio de otra tinta',

  'drill.why.order swapped':
    'Cada tinta se graduó para su cuerpo. En el que no le toca encuentra tintas con más tiro, o más blandas, de lo que puede soportar.',
  'drill.why.tack too high':
    'Una película con demasiado tiro se divide demasiado tarde: antes ceden las más blandas de debajo, y se levantan.',
  'drill.why.tack too low':
    'Una película demasiado blanda se divide demasiado pronto una vez en el pliego: la mantilla siguiente levanta una parte.',
  'drill.why.film too heavy':
    'Más tinta da una masa más oscura, y una película más gruesa se divide con más facilidad.',
  'drill.why.film too thin': 'Menos tinta da una masa más clara, y una película más fina tira más fuerte.',
  'drill.why.water too high':
    'El agua en la tinta ablanda cada película recién puesta, así que cambian las sobreimpresiones; y debilita la superficie del papel.',
  'drill.why.unit too warm':
    'Tinta caliente es tinta blanda: el tiro baja más o menos un 2 o 3 % por grado (cifra de memoria). En el pliego se ve igual que una tinta con poco tiro.',
  'drill.why.paper weak': 'Las tintas tiran como siempre, pero la superficie cede.',
  'drill.why.paper too closed':
    'Las masas salen más claras, porque el papel retiene menos tinta al momento; y las películas se fijan demasiado despacio, así que siguen blandas para la mantilla siguiente.',
  'drill.why.speed too high': 'Con la velocidad todas las tintas tiran más fuerte, pero el papel no aguanta más.',
  'drill.why.interval too short':
    'Una película necesita tiempo sobre el papel para fijarse. Sin él, la mantilla siguiente encuentra una película más blanda.',
  'drill.why.soiled unit':
    'La tinta ajena del cuerpo ensucia su color desde el primer pliego, y se va poco a poco con los pliegos impresos.',

  'drill.putRight.order swapped': 'Devolver las tintas a los cuerpos de la orden de trabajo',
  'drill.putRight.tack too high': 'Bajar {ink} al tiro de la orden de trabajo',
  'drill.putRight.tack too low': 'Subir {ink} al tiro de la orden de trabajo',
  'drill.putRight.film too heavy': 'Dejar entrar menos {ink}, hasta lo que dice la orden',
  'drill.putRight.film too thin': 'Dejar entrar más {ink}, hasta lo que dice la orden',
  'drill.putRight.water too high': 'Bajar el agua a lo que dice la orden',
  'drill.putRight.unit too warm': 'Enfriar el cuerpo de {ink} a lo que dice la orden',
  'drill.putRight.paper weak': 'Cambiar a un papel de la resistencia que dice la orden',
  'drill.putRight.paper too closed': 'Cambiar a un papel tan abierto como dice la orden',
  'drill.putRight.speed too high': 'Bajar la máquina a la velocidad de la orden',
  'drill.putRight.interval too short': 'Usar cuerpos tan separados como dice la orden',
  'drill.putRight.soiled unit': 'Lavar el cuerpo de {ink} y llenarlo de tinta limpia',

  'drill.evidence.eye': 'Pliego, a simple vista',
  'drill.evidence.loupe': 'Cuentahílos',
  'drill.evidence.strip': 'Densitómetro en la tira',
  'drill.evidence.run chart': 'Gráfico de la tirada',
  'drill.evidence.tackmeter': 'Medidor de tiro: {ink}',
  'drill.evidence.thermometer': 'Termómetro: cuerpo de {ink}',
  'drill.evidence.film gauge': 'Medidor de película: {ink}',
  'drill.evidence.units': 'Qué tinta está en qué cuerpo',
  'drill.evidence.water gauge': 'Medidor de agua',
  'drill.evidence.speed counter': 'Contador de velocidad',
  'drill.evidence.unit timing': 'Tiempo entre dos cuerpos',
  'drill.evidence.pick test': 'Ensayo de arrancado del papel',
  'drill.evidence.absorption test': 'Ensayo de absorción del papel',

  'drill.evidenceHow.eye': 'Pon el primer pliego junto al bueno y compara los parches.',
  'drill.evidenceHow.loupe':
    'Cuenta, entre {spots} puntos de un parche, en cuáles falta la última tinta y en cuáles está arrancado el papel.',
  'drill.evidenceHow.strip': 'Lee masas y sobreimpresiones, status T, menos papel.',
  'drill.evidenceHow.run chart': 'Compara las masas del primer pliego con las de la tirada ya estable.',
  'drill.evidenceHow.tackmeter': 'Toma una muestra de la lata y léela en la condición normalizada.',
  'drill.evidenceHow.thermometer': 'Apunta el termómetro a los rodillos por la ventana de la protección.',
  'drill.evidenceHow.film gauge': 'Lee la película de tinta en el rodillo dador, con la máquina parada y bloqueada.',
  'drill.evidenceHow.units': 'Lee las etiquetas de los cuerpos y mira la tinta que llevan.',
  'drill.evidenceHow.water gauge': 'Lee la película de agua comparada con lo normal, por la ventana de la protección.',
  'drill.evidenceHow.speed counter': 'Lee el contador del pupitre.',
  'drill.evidenceHow.unit timing': 'Cronometra un pliego de un cuerpo al siguiente con una luz de destellos.',
  'drill.evidenceHow.pick test': 'Imprime una tira a velocidad creciente con el aceite medio.',
  'drill.evidenceHow.absorption test':
    'Extiende una tinta de ensayo, límpiala a los dos minutos y lee lo oscura que queda la mancha (práctica común).',

  'drill.misled.tackmeter':
    'La muestra de {ink} estuvo abierta y había cambiado: la tinta del cuerpo está como dice la orden.',
  'drill.misled.thermometer':
    'El termómetro de {ink} apuntaba a acero brillante: la temperatura de la tinta es la que dice la orden.',
  'drill.misled.film gauge': 'El medidor de película no se había limpiado: la película de {ink} es la de la orden.',
  'drill.misled.water gauge':
    'El medidor de agua se leyó mientras se volvía a mojar una plancha: el agua es la que dice la orden.',
  'drill.misled.speed counter': 'El contador estaba puesto para otra marcha: la velocidad es la que dice la orden.',
  'drill.misled.unit timing': 'Se cronometró la pareja de cuerpos equivocada: los cuerpos están como dice la orden.',
  'drill.misled.pick test': 'El aceite de ensayo no estaba a 23 °C: el papel es tan fuerte como dice la orden.',
  'drill.misled.absorption test': 'El pliego de ensayo estaba húmedo: el papel es tan abierto como dice la orden.',

  'drill.quantity.lightness': 'L*, luminosidad (0 negro, 100 blanco; sin unidad)',
  'drill.quantity.red-green': 'a* (− verde, + rojo; sin unidad)',
  'drill.quantity.yellow-blue': 'b* (− azul, + amarillo; sin unidad)',
  'drill.quantity.missing': 'Puntos sin la última tinta, de todos los puntos',
  'drill.quantity.torn': 'Puntos arrancados, de todos los puntos',
  'drill.quantity.density': 'Densidad, filtro {filter} (sin unidad)',
  'drill.quantity.drift': 'Densidad ganada en la tirada, filtro {filter} (sin unidad)',
  'drill.quantity.tack': 'Tiro, unidades de tiro',
  'drill.quantity.temperature': 'Temperatura, °C',
  'drill.quantity.film': 'Película en el rodillo dador, µm',
  'drill.quantity.water': 'Agua, veces lo normal',
  'drill.quantity.place': 'Cuerpo en el que está, contado desde 1',
  'drill.quantity.speed': 'Velocidad, m/s',
  'drill.quantity.interval': 'Tiempo entre dos cuerpos, s',
  'drill.quantity.pick velocity': 'Velocidad de arrancado, m/s (no es una velocidad de máquina)',
  'drill.quantity.absorbency': 'Absorción, veces la de la orden',

  'drill.spoken.lightness': 'la luminosidad (L*)',
  'drill.spoken.red-green': 'la lectura de verde a rojo (a*)',
  'drill.spoken.yellow-blue': 'la lectura de azul a amarillo (b*)',
  'drill.spoken.missing': 'la parte de puntos sin la última tinta',
  'drill.spoken.torn': 'la parte de puntos arrancados',
  'drill.spoken.density': 'la densidad con el filtro {filter}',
  'drill.spoken.drift': 'la densidad ganada en la tirada con el filtro {filter}',
  'drill.spoken.tack': 'el tiro',
  'drill.spoken.temperature': 'la temperatura',
  'drill.spoken.film': 'el espesor de la película en el rodillo dador',
  'drill.spoken.water': 'la cantidad de agua',
  'drill.spoken.place': 'el número del cuerpo en el que está',
  'drill.spoken.speed': 'la velocidad de la máquina',
  'drill.spoken.interval': 'el tiempo entre dos cuerpos',
  'drill.spoken.pick velocity': 'la velocidad de arrancado',
  'drill.spoken.absorbency': 'la absorción',

  'drill.verdict.right': 'Correcto: {cause}.',
  'drill.verdict.wrong': 'No es eso: {cause}.',
  'drill.verdict.missed': 'Se te escapó: {cause}.',
  'drill.verdict.proven': 'Lo que has nombrado descarta todas las demás causas propuestas.',
  'drill.verdict.leftOpen':
    '{count, plural, one {Lo que has nombrado no descarta todavía otra explicación: {cause}.} other {Lo que has nombrado no descarta todavía otras # explicaciones, como: {cause}.}}',
  'drill.verdict.against':
    'En contra habla «{evidence}»{where, select, job {} other {, sobre todo en {place}}}. Si fuera así, {quantity} sería{where, select, job {} other { ahí}} {would, select, higher {mayor} other {menor}}.',
  'drill.verdict.next':
    '{open, select, wrong {Nada de lo que tomaste habla todavía en contra. Mira también «{evidence}».} other {Para descartarlo sirve «{evidence}»: tómalo y márcalo también.}}',
  'drill.verdict.measure':
    'Nada de lo que tomaste habla todavía en contra. Pero cada causa tiene una medida en la máquina que la muestra: toma también la de cada una de las otras causas.',
  'drill.verdict.needless': 'Podías haber prescindido de: {evidence}.',
  'drill.verdict.enough': 'Con esto habría bastado: {evidence}.',

  'drill.cure.back': 'El pliego vuelve a ser bueno: a {colour, number, ::.0} dE00 del bueno como mucho.',
  'drill.cure.notBack': 'El pliego todavía no es bueno: sigue a {colour, number, ::.0} dE00 del bueno.',
  'drill.cure.worse':
    'Eso lo ha empeorado: antes estaba a {before, number, ::.0} dE00 del pliego bueno, ahora a {after, number, ::.0}.',
  'drill.cure.idle': 'Eso no ha cambiado nada: no había nada que corregir.',
  'drill.cure.workAround': 'Esto esquiva la causa. La causa sigue ahí.',
  'drill.cure.atTheRoot': 'Esto corrige la causa misma.',

  'remedy.re-grade': 'Volver a graduar los tiros, de 2 en 2 puntos',
  'remedy.reduce tack': 'Bajar 2 puntos el tiro de una tinta posterior con un reductor',
  'remedy.stiffen first': 'Subir 2 puntos el tiro de la primera tinta',
  'remedy.cool first': 'Enfriar 5 °C el primer cuerpo',
  'remedy.slow down': 'Bajar la velocidad una cuarta parte',
  'remedy.more film': 'Dejar entrar un 15 % más de una tinta posterior',
  'remedy.less film first': 'Dejar entrar un 15 % menos de la primera tinta',
  'remedy.light first': 'Imprimir primero la tinta de menor cobertura',
  'remedy.less water': 'Quitar una cuarta parte del agua',
  'remedy.stronger paper': 'Tomar un papel con una cuarta parte más de resistencia superficial',
  'remedy.dry between': 'Dejar secar el pliego antes de una tinta posterior',

  'remedy.re-grade.cost': 'Una última tinta demasiado blanda imprime bordes poco nítidos.',
  'remedy.reduce tack.cost': 'La tinta rebajada tiene menos color, ensancha los puntos y se fija más despacio.',
  'remedy.stiffen first.cost': 'Una primera tinta con más tiro tira más del papel: puede arrancarlo.',
  'remedy.cool first.cost': 'Una primera tinta más fría, con más tiro, tira más del papel: puede arrancarlo.',
  'remedy.slow down.cost': 'Menos pliegos por hora.',
  'remedy.more film.cost': 'Más tinta repinta en el pliego siguiente y tarda más en secar.',
  'remedy.less film first.cost': 'Una primera película más fina tira más del papel y cubre menos.',
  'remedy.light first.cost': 'Rompe la secuencia habitual, para la que se hacen las pruebas y los perfiles de color.',
  'remedy.less water.cost': 'Con muy poca agua la plancha toma tinta donde debe quedar limpia: engrase.',
  'remedy.stronger paper.cost': 'El papel más fuerte cuesta más.',
  'remedy.dry between.cost':
    'Otra pasada por la máquina; y la tinta que ha secado demasiado puede rechazar la siguiente.',

  'effect.least trap': 'Peor atrapado en peso',
  'effect.most lifted': 'Lo más que un cuerpo levanta de una tinta anterior',
  'effect.most torn': 'Papel arrancado',
  'effect.contamination': 'Más tinta ajena en un cuerpo, estable (índice calculado, propio del modelo)',
  'effect.thinnest solid': 'Masa más fina',
  'effect.ink laid': 'Tinta puesta donde imprimen todas',
  'effect.speed': 'Velocidad',
}
