/** What the measurements say, in Spanish: traps, filters and refusals, aims, the press sheet, the fit, formula practice. */
import type { measure as english } from '../en/measure.ts'
import type { Translated } from '../translated.ts'

export const measure: Translated<typeof english> = {
  'trap.notANumber': 'No se puede calcular el atrapado: {symbol} no es un número. Lee otra vez ese parche.',
  'trap.negative':
    'No se puede calcular el atrapado: {symbol} es {value, number, ::.00}. Una [[density|densidad]] por encima de la del papel no puede ser menor que 0; pon el densitómetro a 0 sobre el papel desnudo.',
  'trap.tooHigh':
    'No se puede calcular el atrapado: {symbol} es {value, number, ::.00}, y ningún impreso pasa de {most, number}. ¿Falta una coma decimal?',
  'trap.secondReadsNothing':
    'No se puede calcular el atrapado: D2, la segunda tinta sola, da 0, y el atrapado se cuenta respecto a ella. Lee la masa de la segunda tinta.',
  'trap.readsNextToNothing':
    'Aquí las densidades no dicen ningún atrapado: {ink} sola da solo {D2, number, ::.00} por el filtro {filter}, así que la última cifra de una lectura decidiría la respuesta.',
  'trap.noLightLeft':
    'Aquí las densidades no dicen ningún atrapado: lo que hay debajo da {D1, number, ::.00} por el filtro {filter}; {ink}, sola, {D2, number, ::.00}. La tinta de debajo ya se ha llevado esa luz y apenas deja nada para {ink}.',
  'trap.dryBefore': 'Aquí no hay atrapado húmedo sobre húmedo: el pliego está seco cuando llega a {ink}.',
  'trap.filmNotANumber': 'No se puede calcular el atrapado en peso: una película no es un número.',
  'trap.filmNegative': 'No se puede calcular el atrapado en peso: una película no puede ser menor que 0.',
  'trap.nothingOnBare':
    'No se puede calcular el atrapado en peso: no hay tinta sobre papel desnudo con la que compararlo.',

  'filter.complementary': 'El filtro {filter} es el adecuado para {ink}: deja pasar la luz que {ink} se lleva.',
  'filter.strongest':
    'Se usa el filtro {filter} porque por él la masa de {ink} da la lectura más alta. Solo cian, magenta y amarillo tienen un filtro fijado por regla.',
  'filter.wrong':
    'Este filtro no es el adecuado: por el {filter}, {ink} oscurece menos que por el {right}, así que el número habla más de la tinta de debajo. El atrapado se lee siempre por el filtro de la segunda tinta.',

  'why.alike':
    'Aquí los dos coinciden por casualidad en menos de 2 puntos, aunque miden cosas distintas: pasó el {massTrap, number, ::.0} % de la película de la tinta, y se añadió el {apparent, number, ::.0} % de su densidad.',
  'why.densitiesDoNotAddUp':
    'Pasó el {massTrap, number, ::.0} % de la película, pero el densitómetro dice {apparent, number, ::.0} %. Las densidades de unas tintas encima de otras no se suman: la luz que ya se han llevado la tinta de debajo y la superficie no se puede quitar otra vez. Incluso si pasara toda, aquí se leería solo {full, number, ::.0} %.',
  'why.lifted':
    'Pasó el {massTrap, number, ::.0} % de la película, pero el densitómetro dice {apparent, number, ::.0} %. El segundo cuerpo además levantó el {lost, number, ::.0} % de la tinta de debajo, y el densitómetro se lo descuenta a la segunda tinta; si pasara toda, se leería {full, number, ::.0} %.',
  'why.thinFilmsReadDark':
    'Pasó solo el {massTrap, number, ::.0} % de la película, pero el densitómetro dice {apparent, number, ::.0} %. Una película fina oscurece más para su grosor que una entera, así que un mal atrapado parece mejor de lo que es.',

  'strip.inkWithoutColour':
    'Donde imprime {ink} no se puede mostrar ni leer ningún color: no tiene. Dale un color en el banco, en su línea bajo la escalera.',

  'aim.unknown': '«{set}» no es ningún conjunto publicado. Se conocen {known}.',
  'aim.spotInk':
    'Los conjuntos publicados solo tienen cian, magenta, amarillo y negro; {ink} no es ninguno de ellos, así que aquí no hay objetivo.',

  'sheet.empty':
    'El archivo está vacío. Necesita una línea de encabezados y una línea por parche; se puede guardar una plantilla.',
  'sheet.otherKind':
    'Este es un archivo {kind}, no una tabla de lecturas. En una hoja de cálculo, guarda la tabla como CSV; aquí se puede guardar una plantilla.',
  'sheet.noText':
    'Este archivo no es de texto, así que no puede ser una tabla de lecturas. En una hoja de cálculo, guarda la tabla como CSV.',
  'sheet.tooLarge': 'Este archivo tiene más de {most, number} caracteres; las lecturas de un pliego son muchas menos.',
  'sheet.tooManyRows': 'Esta tabla tiene más de {most, number} filas; las lecturas de un pliego son muchas menos.',
  'sheet.missingColumns':
    'A esta tabla le faltan las columnas {missing}; sus encabezados son {found}. Hacen falta patch, red, green y blue; se puede guardar una plantilla.',
  'sheet.columnTwice': 'Hay dos columnas encabezadas {column}; cada encabezado solo puede estar una vez.',
  'sheet.nothingToUse': 'No se ha podido usar ninguna fila de esta tabla.',
  'sheet.openQuote': 'una comilla no está bien cerrada',
  'sheet.tooManyCells':
    'tiene {count, number} celdas donde los encabezados nombran {allowed, number}; una coma decimal en una tabla separada por comas necesita comillas',
  'sheet.noPatch': 'no dice el parche; nombra sus tintas unidas con +, o paper',
  'sheet.unknownInk':
    '«{ink}» no es ninguna tinta cargada; ¿querías decir {near}? Están cargadas {known}, y el papel desnudo se llama paper',
  'sheet.inkTwice': '«{patch}» nombra una tinta dos veces',
  'sheet.missingCell': 'falta la densidad por el filtro {filter}',
  'sheet.notANumber': '«{text}» en la columna {filter} no es un número',
  'sheet.negative':
    '{value, number, ::.00} en la columna {filter} es menor que 0; pon el densitómetro a 0 sobre el papel desnudo, o lee también el papel',
  'sheet.tooHigh':
    '{value, number} en la columna {filter} pasa de {most, number}, y ningún impreso da tanto; ¿falta una coma decimal?',
  'sheet.belowPaper': 'da menos que el papel del mismo pliego; una de las dos lecturas está mal',
  'sheet.patchMissing': 'No se puede calcular el atrapado: no se leyó el parche {patch}.',

  'fit.nothingToFit': 'Elige al menos un valor para ajustar.',
  'fit.otherInks':
    'Las lecturas son de otras tintas ({sheet}) que las cargadas ahora. Carga esas tintas en ese orden, o lee otra vez el pliego.',
  'fit.tooFewReadings':
    '{readings, number} densidades no pueden decidir {parameters, plural, one {# valor} other {# valores}}. Lee más parches, o ajusta menos valores.',
  'fit.needsOverprints':
    'No se leyó ninguna sobreimpresión, y solo ellas muestran lo que actúa en el [[trapping|atrapado]]. Lee parches de dos tintas o más, o ajusta solo las películas.',
  'fit.leftOpen':
    'Estas lecturas dejan sin decidir: {parameters}. Casi cualquier otro valor las cumpliría igual de bien, así que no se da ninguno. Ajusta menos valores a la vez, o lee parches que los distingan.',
  'fit.poor':
    'El modelo cumple estas lecturas solo a ±{deviation, number, ::.00} de densidad, varias veces lo que explica la última cifra de un densitómetro. Sus tintas o su papel no son del todo los de esta máquina.',
  'fit.atBound':
    'Se llegó al límite permitido en: {parameters}. Puede que la máquina esté fuera de lo que el modelo alcanza.',
  'fit.parameter.film': 'película de {ink} en el rodillo dador',
  'fit.parameter.tack': 'tiro de {ink}',
  'fit.parameter.dampening': 'mojado',
  'fit.parameter.settingGain': 'ganancia por fijado del papel',
  'fit.parameter.evenness': 'uniformidad del papel',

  'formula.empty': 'Escribe una ecuación con D1, D2 y D3.',
  'formula.tooLong': 'Esto tiene más de {most, number} caracteres; las ecuaciones pedidas son más cortas.',
  'formula.tooDeep': 'Hay demasiados paréntesis dentro de paréntesis.',
  'formula.unreadable': 'Esto no se puede leer como ecuación. ¿Están cerrados todos los paréntesis?',
  'formula.unreadableAt':
    'Esto no se puede leer a partir del signo {place, number}. ¿Falta allí un paréntesis o un operador?',
  'formula.onlyArithmetic':
    'Aquí solo se pueden usar números (con punto decimal), D1, D2, D3, + − × / ^, paréntesis y log10, ln, exp, sqrt.',
  'formula.unknownSymbol': '«{name}» no se conoce aquí; las densidades se llaman D1, D2 y D3.',
  'formula.unknownOperator': 'El operador «{name}» no se usa aquí; se admiten + − × / ^.',
  'formula.unknownFunction': '«{name}» no se usa aquí; se admiten log10, ln, exp y sqrt.',
  'formula.missingTimes': '{name} está justo delante de un paréntesis; escribe × entre los dos si se multiplican.',
  'formula.whichLog': 'log puede ser dos cosas: escribe log10 para el de las densidades, o ln.',
  'formula.oneValue': '{name} lleva un solo valor.',
  'formula.slip.share': 'Esto da el atrapado como parte de 1; la ecuación pedida lo da en tanto por ciento.',
  'formula.slip.exchanged': 'D1 y D2 están cambiadas: D1 es la primera tinta sola, D2 la segunda.',
  'formula.slip.firstKept':
    'Esto divide toda la sobreimpresión por la segunda tinta; antes hay que restar la densidad de la primera.',
  'formula.slip.overFirst':
    'Esto compara la densidad añadida con la primera tinta; el atrapado se cuenta respecto a la segunda sola.',
  'formula.slip.overBoth':
    'Esto compara densidades con su suma; la densidad añadida hay que compararla con la de la segunda tinta.',
  'formula.slip.preucil': 'Esta es la ecuación de Preucil; se pedía otra.',
  'formula.slip.ritz': 'Esta es la ecuación de Ritz; se pedía otra.',
  'formula.slip.brunner': 'Esta es la ecuación de Brunner; se pedía otra.',
}
