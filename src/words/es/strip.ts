/** The strip in Spanish: its patches, the densitometer, traps, colours, own press sheets, formula practice and the shelf. */
import type { strip as english } from '../en/strip.ts'
import type { Translated } from '../translated.ts'

export const strip: Translated<typeof english> = {
  'strip.title': '[[control-strip|Tira de control]]',
  'strip.parts': 'Qué muestra la tira',
  'strip.part.strip': 'Tira',
  'strip.part.sheet': 'Tu pliego',
  'strip.part.practice': 'Práctica',
  'strip.part.shelf': 'Estante',

  'strip.intro':
    'Parches al borde del pliego, impresos para medirse: cada tinta sola, después unas tintas encima de otras. Pulsa un parche, o usa las flechas, para poner encima el [[densitometer|densitómetro]].',
  'strip.patches': 'Parches de la tira; las flechas mueven el densitómetro',
  'strip.paper': 'papel desnudo',
  'strip.paperShort': 'papel',
  'strip.allShort': 'todas',
  'strip.patchName': '{letters}: {name}',
  'strip.unknown': 'sin dato',
  'strip.underHead': 'El densitómetro está sobre {name}.',
  'strip.underHeadMass':
    '{name}: el {mass} % de la película de {later} pasó a {below}; aquí las densidades no dicen ningún atrapado.',
  'strip.underHeadTrap':
    '{name}: el {mass} % de la película de {later} pasó a {below} (atrapado en peso); el densitómetro dice {apparent} % (atrapado aparente, Preucil).',
  'strip.reconstructed':
    'Todos los colores de tinta de aquí están reconstruidos para dar el papel y las masas del conjunto publicado {set}; ninguno se midió como espectro.',
  'strip.spotReconstructed': 'Las tintas directas se reconstruyen a partir de un solo color cada una.',
  'strip.outsideMark':
    'Una esquina oscura marca los colores que tu pantalla no alcanza: se muestra el más cercano de su tono.',

  'strip.meter': '[[densitometer|Densitómetro]]',
  'strip.status': 'Status',
  'strip.status.E': 'Status E, habitual en Europa',
  'strip.status.T': 'Status T, habitual en Norteamérica',
  'strip.statusNote.E':
    '[[density-status|Status E]] es el habitual en Europa. Se aparta del T sobre todo en el azul, así que una lectura sin su status dice poco del amarillo.',
  'strip.statusNote.T':
    '[[density-status|Status T]] es el habitual en Norteamérica. Se aparta del E sobre todo en el azul, así que una lectura sin su status dice poco del amarillo.',
  'strip.base': 'Lectura',
  'strip.base.minus paper': 'menos papel',
  'strip.base.absolute': 'absoluta',
  'strip.absoluteNote':
    'Las lecturas absolutas incluyen la densidad del propio papel. El atrapado se calcula siempre [[minus-paper|menos papel]].',
  'strip.filter': 'Filtro para el atrapado',
  'strip.filter.right': 'el adecuado',
  'strip.filter.red': 'rojo',
  'strip.filter.green': 'verde',
  'strip.filter.blue': 'azul',
  'strip.filmsHere': 'Qué hay en este parche',
  'strip.filmUm': 'película, µm',
  'strip.leftOut':
    'Con otras tintas llegaron aquí {film} µm de {ink}. No tiene color y no cuenta en lo que se muestra.',

  'strip.trap': 'Atrapado',
  'strip.trapOf': 'Atrapado de {later} sobre {below}',
  'strip.noTrapHere':
    'El [[trapping|atrapado]] es lo bien que una tinta agarra sobre otra aún húmeda. Hacen falta dos tintas en el mismo sitio: elige un parche de dos letras o más.',
  'strip.both': 'ambas',
  'strip.densitiesThrough': 'Densidades menos papel por el filtro {filter}, status {status}',
  'strip.massTrap': '[[mass-trap|Atrapado en peso]]',
  'strip.massNote':
    'La película de la tinta sobre tinta húmeda, comparada con su película sobre papel desnudo, en µm. El modelo conoce estas películas; en el taller no las ve nadie.',
  'strip.massBeside': 'El atrapado en peso de al lado sigue valiendo.',
  'strip.apparentTrap': '[[apparent-trap|Atrapado aparente]]',
  'strip.by.preucil': '[[apparent-trap|Atrapado aparente]] según [[preucil-equation|Preucil]]',
  'strip.by.ritz': '[[apparent-trap|Atrapado aparente]] según [[ritz-equation|Ritz]]',
  'strip.by.brunner': '[[apparent-trap|Atrapado aparente]] según [[brunner-equation|Brunner]]',
  'strip.name.preucil': 'Preucil',
  'strip.name.ritz': 'Ritz',
  'strip.name.brunner': 'Brunner',
  'strip.ownScale':
    'En una escala propia{none, plural, =0 {: cuenta luz, no densidad} other {: sin nada de la segunda tinta sobre la primera todavía daría # %}}. No lo compares con los otros dos.',
  'strip.band.below':
    '{percent} % queda por debajo del {least} al {most} % que se tiene por normal en el atrapado aparente según Preucil.',
  'strip.band.inside':
    '{percent} % está dentro del {least} al {most} % que se tiene por normal en el atrapado aparente según Preucil.',
  'strip.band.above':
    '{percent} % queda por encima del {least} al {most} % que se tiene por normal en el atrapado aparente según Preucil.',
  'strip.why': 'Por qué no coinciden el atrapado en peso y el aparente',

  'strip.colour': 'Color',
  'strip.printed': 'impreso',
  'strip.wanted': 'objetivo de {set}',
  'strip.outsideScreen':
    'Tu pantalla no alcanza este color y no puede mostrarlo. Lo sustituye el más cercano de su tono, a ΔE00 {difference}.',
  'strip.aim': 'Objetivo publicado',
  'strip.aimNote': 'El [[aim|objetivo]] se publicó para: {condition}.',
  'strip.labTable': 'L*, a*, b* (D50, observador de 2°), papel incluido',
  'strip.thisPatch': 'este parche, reconstruido',
  'strip.difference': 'ΔE00, [[colour-difference|diferencia de color]] con el objetivo',
  'strip.hueGrey': 'Uno de los dos es casi gris, así que aquí un giro de [[hue|tono]] no significa nada.',
  'strip.hueTurn':
    '{way, select, none {Su tono es el del objetivo.} on {Su tono está girado {degrees}° a la izquierda respecto al del objetivo.} other {Su tono está girado {degrees}° a la derecha respecto al del objetivo.}}',
  'strip.chromaChange':
    'Es {way, select, less {menos vivo en {by}} other {más vivo en {by}}} y {lightWay, select, darker {más oscuro en {lightBy}} other {más claro en {lightBy}}} (croma y L*).',
  'strip.plane':
    'Plano a*, b*. Una flecha va del objetivo de {set}, a* {aimA}, b* {aimB}, a este parche, a* {a}, b* {b}.',
  'strip.plane.close': '{times} × más cerca',
  'strip.plane.right': '+a* rojo',
  'strip.plane.left': '−a* verde',
  'strip.plane.up': '+b* amarillo',
  'strip.plane.down': '−b* azul',

  'strip.spectrum': 'Luz devuelta, por longitud de onda',
  'strip.spectrumOf':
    'Espectro de {name}: tanto por ciento de luz devuelta, de 380 a 730 nm. Los números están en la tabla de abajo.',
  'strip.spectrumNote': 'Tanto por ciento de luz devuelta (reflectancia), reconstruido para dar {set}; no está medido.',
  'strip.spectrumTable': 'El espectro en una tabla',
  'strip.wavelength': 'longitud de onda, nm',
  'strip.reflectanceOf': '{name}, %',
  'strip.filterLooks': 'donde mira el filtro {filter}',

  'strip.ownSheet': 'Tu propio [[press-sheet|pliego de muestra]]',
  'strip.ownSheetIntro':
    'Lee la tira de un pliego de una máquina real, escribe las [[density|densidades]] o elige un archivo con ellas, y mira su atrapado. Después deja que el modelo encuentre la máquina que imprime así. Tintas cargadas, en orden de impresión: {inks}. Nada de lo que escribas sale de este ordenador.',
  'strip.statusOfYours': 'Status de tu densitómetro',
  'strip.nothingRead':
    'Todavía no se ha leído nada. El atrapado aparece en cuanto haya lecturas de masas y sobreimpresiones.',
  'strip.badRows': '{count, plural, one {Se ha omitido una fila} other {Se han omitido # filas}}',
  'strip.badTypedRow': '{patch}: {problem}',
  'strip.badRow': 'Línea {line, number}: {problem}',
  'strip.file': 'De un archivo',
  'strip.fileChoose': 'Elige un archivo CSV, o suéltalo aquí',
  'strip.fileRead': 'Las lecturas se toman de «{name}».',
  'strip.fileAway': 'Dejar el archivo y escribir',
  'strip.columns': 'Qué son las columnas',
  'strip.column.patch':
    'las tintas que imprimen allí, unidas con +, como magenta+yellow, con el nombre que tienen en el banco; o paper',
  'strip.column.red': 'densidad por el filtro rojo',
  'strip.column.green': 'densidad por el filtro verde',
  'strip.column.blue': 'densidad por el filtro azul',
  'strip.column.sheet':
    'se puede omitir: un número o texto por pliego; de cada parche se hace la media de todos los pliegos',
  'strip.columnsNote':
    'La primera línea lleva estos encabezados. Las columnas pueden separarse con coma, punto y coma o tabulador; los decimales pueden llevar punto o coma. Si hay una fila del papel, todas las densidades cuentan como absolutas y se les resta la del papel; si no la hay, cuentan ya como menos papel.',
  'strip.template': 'Guardar una plantilla, separada por',
  'strip.template.comma': 'coma',
  'strip.template.semicolon': 'punto y coma',
  'strip.template.tab': 'tabulador',
  'strip.typed': 'O a mano',
  'strip.typedNote':
    'Valen la coma y el punto decimal. Las filas vacías se pasan por alto. Con lecturas del papel, todas las demás cuentan como absolutas; sin ellas, como menos papel.',
  'strip.patch': 'parche',
  'strip.cell': '{patch}, densidad por el filtro {filter}',
  'strip.fillComputed': 'Rellenar con la tira calculada',
  'strip.clear': 'Vaciar la tabla',
  'strip.fillNote':
    'La tira calculada es para probar: sus números vienen del modelo con la tirada ya estable, no de ninguna máquina.',
  'strip.sheetTraps': '[[apparent-trap|Atrapado aparente]] en tu pliego',
  'strip.sheetTrapsRegion': 'Tabla del atrapado en tu pliego',
  'strip.sheetRead':
    '{patches, plural, one {Se ha leído un parche} other {Se han leído # parches}}, {paper, select, true {con el papel descontado} other {como menos papel}}.',
  'strip.noOverprintRead':
    'No se ha leído ninguna sobreimpresión, y el atrapado la necesita: lee un parche de dos tintas o más.',
  'strip.laterOnBelow': 'tinta sobre lo que hay debajo',
  'strip.pair': '{later} sobre {below}',
  'strip.none': 'ninguno',
  'strip.whyNone': '{count, plural, one {Por qué una pareja no lo tiene} other {Por qué # parejas no lo tienen}}',
  'strip.noneBecause': '{pair}: {reason}',
  'strip.scalesNote':
    'Cada ecuación tiene su propia escala; los números de columnas distintas no se pueden comparar. El atrapado en peso no se lee con un densitómetro: ajusta el modelo, más abajo, para verlo.',

  'strip.fit': 'Ajustar el modelo a tu máquina',
  'strip.fitIntro':
    'Elige qué números de la configuración pueden moverse. Se mueven hasta que las [[density|densidades]] calculadas se acercan a las tuyas todo lo que pueden; los demás se quedan como están en el banco. Lee un pliego de mitad de tirada: el ajuste supone la máquina estable.',
  'strip.fitFree': 'puede moverse',
  'strip.fitStart': 'ahora',
  'strip.fitBounds': 'permitido',
  'strip.bounds': 'de {least} a {most}',
  'strip.fitNote':
    'En el atrapado solo actúan las proporciones entre tiros: deja fijo al menos uno. Mojado, ganancia por fijado y uniformidad hacen casi lo mismo, así que las lecturas suelen decidir solo uno de ellos.',
  'strip.fitGo': 'Ajustar la máquina',
  'strip.fitting': 'Ajustando…',
  'strip.fitStep': 'Paso {step, number} de {most, number} como mucho; las lecturas se fallan en {difference} de media',
  'strip.fitted': 'Máquina ajustada',
  'strip.fitDeviation':
    '{readings, number} lecturas se cumplen a ±{deviation} de densidad (una desviación típica; nunca se da menos de 0,01) después de {steps, plural, one {un paso} other {# pasos}}.',
  'strip.fitValue': 'valor',
  'strip.fitFound': 'hallado',
  'strip.fitError': 'error típico',
  'strip.fitDecided': 'lo deciden las lecturas',
  'strip.decided.well': 'bien',
  'strip.decided.roughly': 'a grandes rasgos',
  'strip.decided.hardly': 'apenas',
  'strip.entangled':
    '{first} y {second} pueden compensarse en buena parte en estas lecturas: fíate de los dos juntos, no de cada uno.',
  'strip.residuals': 'Lo que sobra, parche a parche',
  'strip.residualsNote': 'Leído / calculado (diferencia), densidad menos papel.',
  'strip.residual': '{read} / {computed} ({off})',
  'strip.pressName': 'Nombre de esta máquina',
  'strip.pressNameUsual': 'nuestra máquina',
  'strip.usePress': 'Usar como mi máquina',
  'strip.pressInUse': '«{name}» está ya en el estante y en el banco. Deshacer la quita del banco.',

  'strip.practice': 'Las ecuaciones del atrapado, de memoria',
  'strip.practiceTask':
    'Escribe la ecuación del [[apparent-trap|atrapado aparente]] en tanto por ciento. Todas las [[density|densidades]] son menos papel, por el filtro de la segunda tinta:',
  'strip.practiceD1': 'D1 es la densidad de la primera tinta sola',
  'strip.practiceD2': 'D2 es la densidad de la segunda tinta sola',
  'strip.practiceD3': 'D3 es la densidad de la segunda tinta sobre la primera',
  'strip.practiceOf': 'Ecuación de quién',
  'strip.idea.preucil': 'Preucil: la densidad que añade la segunda tinta, frente a la densidad que tiene sola.',
  'strip.idea.ritz':
    'Ritz: la parte de luz que la segunda tinta toma de la que deja pasar la primera, frente a la parte que toma sola. Una densidad D deja pasar 10^(−D) de la luz.',
  'strip.idea.brunner':
    'Brunner: la parte de luz que toman las dos, frente a la que tomarían si sus densidades se sumaran. Una densidad D deja pasar 10^(−D) de la luz.',
  'strip.practiceInput': 'Atrapado en % =',
  'strip.practiceCheck': 'Comprobar',
  'strip.practiceShow': 'Mostrar la ecuación',
  'strip.practiceAllowed':
    'Se admite: D1, D2, D3, números (con punto decimal), + − × / ^, paréntesis, log10, ln, exp, sqrt.',
  'strip.practiceAnswer': 'La ecuación',
  'strip.verdict.right': 'Correcto: da lo mismo que la ecuación pedida, sean cuales sean las densidades.',
  'strip.verdict.wrong': 'Todavía no.',
  'strip.understood': 'Se ha entendido así:',
  'strip.noSlip': 'No da lo que da la ecuación pedida. Compara las dos en el caso de abajo.',
  'strip.example': 'Con D1 = {D1}, D2 = {D2}, D3 = {D3} la tuya da {typed}; lo correcto es {wanted} %.',
  'strip.exampleNone': 'Con D1 = {D1}, D2 = {D2}, D3 = {D3} la tuya no da ningún número; lo correcto es {wanted} %.',

  'strip.shelf': 'Estante',
  'strip.shelfIntro':
    'Tus propias tintas, papeles y máquinas, cada una con su nombre. Guarda el estante en un archivo para conservarlo o pasarlo, y abre ese archivo para recuperarlo.',
  'strip.inks': '[[ink|Tintas]]',
  'strip.papers': '[[paper|Papeles]]',
  'strip.presses': '[[press|Máquinas]]',
  'strip.none.inks': 'Ninguna tinta propia todavía.',
  'strip.none.papers': 'Ningún papel propio todavía. Cambia un papel en el banco y guárdalo aquí.',
  'strip.none.presses':
    'Ninguna máquina propia todavía. Guarda la del banco, o ajusta una a tu propio pliego de muestra.',
  'strip.use.inks': 'Cargar',
  'strip.use.papers': 'Imprimir en él',
  'strip.use.presses': 'Montar',
  'strip.useThat.inks': 'Cargar {name}',
  'strip.useThat.papers': 'Imprimir en él: {name}',
  'strip.useThat.presses': 'Montar {name}',
  'strip.used': '«{name}» está ahora en el banco. Deshacer lo quita.',
  'strip.takeOff': 'Quitar',
  'strip.takeOffThat': 'Quitar {name}',
  'strip.tookOff': '«{name}» se ha quitado del estante.',
  'strip.inkNote': 'tiro {tack}, película {film} µm',
  'strip.paperNote': 'hecho a partir de {base}',
  'strip.pressNote': '{speed} m/s',
  'strip.fitNoteShort': 'ajustada a {readings, number} lecturas, ±{deviation} de densidad',
  'strip.whichInk': 'Tinta cargada',
  'strip.nameIt': 'Nombre',
  'strip.save.inks': 'Guardar esta tinta',
  'strip.save.papers': 'Guardar este papel',
  'strip.save.presses': 'Guardar esta máquina',
  'strip.saved': '«{name}» está en el estante.',
  'strip.savedOver': '«{name}» está en el estante, en lugar de lo que tenía ese nombre.',
  'strip.nameWrong': 'Esto no es un nombre: se admite de 1 a {most, number} caracteres, sin la palabra «on» suelta.',
  'strip.nameOfPaper': '«{name}» es un papel de fábrica; elige otro nombre.',
  'strip.newInk': 'Hacer una tinta nueva',
  'strip.tack': 'Valor de tiro',
  'strip.colourBy': 'Su color',
  'strip.colourBy.screen': 'elegido en la pantalla',
  'strip.colourBy.lab': 'como L*, a*, b*',
  'strip.colourPick': 'Color',
  'strip.make': 'Ponerla en el estante',
  'strip.shelfFile': 'El estante entero',
  'strip.shelfSave': 'Guardar en un archivo',
  'strip.shelfOpen': 'Abrir un estante guardado',
  'strip.opened':
    'El estante se ha abierto. {count, plural, =0 {Nada de lo que había ha tenido que ceder el sitio.} one {Una entrada ha cedido el sitio a otra del mismo nombre: {names}.} other {# entradas han cedido el sitio a otras del mismo nombre: {names}.}}',
}
