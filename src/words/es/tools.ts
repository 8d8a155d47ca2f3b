/** Sharing, saving and opening, the draft, and what can be taken along on paper or as a table, in Spanish. */
import type { tools as english } from '../en/tools.ts'
import type { Translated } from '../translated.ts'

export const tools: Translated<typeof english> = {
  'tools.share': 'Compartir',
  'tools.file': 'Archivo',
  'tools.shareHead': 'Compartir esta configuración',
  'tools.fileHead': 'Guardar, abrir, imprimir',
  'tools.dropHere': 'Suelta para mirar el archivo. En el banco todavía no cambia nada.',

  'tools.draft.opening': 'Abriendo…',
  'tools.draft.empty': 'Sin cambios',
  'tools.draft.saved': 'Guardado',
  'tools.draft.not saved': 'Sin guardar',
  'tools.draft.storage full': 'Borrador sin guardar: memoria llena',
  'tools.draft.storage blocked': 'Sin borrador: memoria bloqueada',
  'tools.draft.private': 'Sin borrador: ventana privada',
  'tools.draft.not loaded': 'Sin borrador: página incompleta',
  'tools.draftMeans.opening': 'La página mira si este navegador ha guardado un borrador.',
  'tools.draftMeans.empty':
    'No ha cambiado nada desde que se abrió la página, así que todavía no hay borrador. Este navegador puede guardar uno.',
  'tools.draftMeans.saved':
    'Este navegador guarda lo que hay en el banco, las escenas de una clase, los ensayos y las lecturas; estarán aquí cuando vuelvas a esta página en este ordenador. Nada ha salido del ordenador.',
  'tools.draftMeans.not saved':
    'Lo que hay en el banco todavía no se ha escrito en la memoria de este navegador; se hace un momento después de cada cambio.',
  'tools.draftMeans.storage full':
    'A este navegador no le queda sitio para los últimos cambios. El último borrador guardado sigue ahí. Guarda un archivo para no perder nada.',
  'tools.draftMeans.storage blocked':
    'Este navegador no guarda nada de esta página, así que al cerrarla se pierde lo que hay en el banco. Guarda un archivo para conservarlo.',
  'tools.draftMeans.private':
    'Esta ventana no guarda nada, como pueden hacer las ventanas privadas, así que al cerrarla se pierde lo que hay en el banco. Guarda un archivo para conservarlo.',
  'tools.draftMeans.not loaded':
    'Una parte de la página no ha llegado, así que no se guarda ningún borrador. Carga la página otra vez cuando vuelva la conexión, o guarda un archivo.',
  'tools.draftHead': 'El borrador en este navegador',
  'tools.aside':
    'Se ha encontrado un borrador que no se puede leer: {reason} Se ha apartado y nada de él está en el banco. Puedes guardar su texto como archivo y pedir que alguien lo mire.',
  'tools.asideWork':
    'Parte del trabajo guardado en este navegador (lecciones o ejercicios) no se puede leer. Se ha apartado; todo lo que se puede leer sigue ahí. Puedes guardar su texto como archivo y pedir que alguien lo mire.',
  'tools.asideSave': 'Guardar su texto',
  'tools.asideDrop': 'Tirarlo',
  'tools.asideReason': 'su texto está dañado.',

  'tools.link': 'Enlace a esta configuración y vista',
  'tools.linkLength':
    '{length, number} caracteres{shortened, select, none {} other { (números redondeados a {shortened} decimales, para que los programas de correo no corten el enlace)}}. Quien lo abra ve lo que tú ves ahora; los cambios posteriores necesitan un enlace nuevo.',
  'tools.copy': 'Copiar',
  'tools.copied': 'Copiado.',
  'tools.copySelected':
    'El navegador no deja copiar a la página. El texto está seleccionado: cópialo con Ctrl+C o Cmd+C.',
  'tools.noAddress':
    'Esta página se abrió desde un archivo, que no tiene una dirección a la que otros lleguen. Da la dirección de la página en la web, o guarda un archivo y pásalo.',
  'tools.publicAddress': 'Dirección de la página en la web',
  'tools.publicAddressWrong':
    '«{given}» no es la dirección de una página; se admiten direcciones que empiecen por https:// o http://.',
  'tools.afterAddress': 'Lo que va detrás de la dirección de la página',
  'tools.saveInstead': 'Guardar un archivo en su lugar',
  'tools.linkNoScenes':
    'El enlace abre la configuración en el banco. Las escenas de la clase no van en él: van en un archivo, que guarda «Archivo».',
  'tools.picture': 'Imagen del enlace para móviles',
  'tools.pictureOf': 'Imagen QR del enlace, {length, number} caracteres',
  'tools.pictureLarge': 'Mostrarla grande',
  'tools.pictureSmall': 'Mostrarla pequeña',
  'tools.pictureWithoutView':
    'La imagen abre la configuración en el banco. Se omite lo que estás mirando, porque con ello el enlace es demasiado largo para una imagen.',
  'tools.noPicture':
    'Sin imagen: el enlace tiene {length, number} caracteres. Hasta {most, number}, los cuadros son bastante grandes para un móvil al fondo de una sala. Con nombres más cortos y menos números distintos de los habituales se acorta.',
  'tools.noPictureAddress': 'Sin imagen: todavía no hay dirección pública.',

  'tools.embed': 'Mostrarlo dentro de otra página',
  'tools.embedHow':
    'Elige lo que se omite y copia el texto en el código de tu página o en el bloque HTML de un sistema de aprendizaje.',
  'tools.leaveOut': 'Omitir',
  'tools.leaveOutAll': 'Tiene que quedar al menos una parte.',
  'tools.part.header': 'cabecera de la página',
  'tools.part.scenarios': 'configuraciones preparadas',
  'tools.part.ladder': 'escalera de tintas',
  'tools.part.paper': 'papel',
  'tools.part.press': 'máquina',
  'tools.part.transport': 'imprimir y pausa',
  'tools.part.line picture': 'línea de la máquina',
  'tools.part.section': 'sección en la línea de contacto',
  'tools.part.loupe': 'cuentahílos',
  'tools.part.telling': 'qué pasó',
  'tools.part.readings': 'lecturas',
  'tools.part.workings': 'cómo se calcula',
  'tools.embedText': 'Texto para la otra página',
  'tools.embedTitle': 'Tackstair: tintas húmedas en una máquina offset',
  'tools.try': 'Verlo en otra pestaña',

  'tools.save': 'Guardar todo',
  'tools.saveWhat':
    'Un solo archivo contiene la configuración, la vista, las escenas de una clase, los ensayos, las lecturas de un pliego de muestra, tus propias tintas, papeles y máquinas, y hasta dónde has llegado en las lecciones.',
  'tools.fileName': 'Nombre del archivo',
  'tools.usualName': 'configuracion',
  'tools.saveFile': 'Guardar el archivo',
  'tools.saved': 'Entregado al navegador como «{name}».',
  'tools.open': 'Abrir un archivo',
  'tools.openHow':
    'Elige un archivo, o arrástralo a la página. Ocupa el lugar de lo que hay en el banco; de las lecciones no se pierde nada de lo hecho aquí.',
  'tools.openChoose': 'Archivo que se abre',
  'tools.opened': '«{name}» está abierto.',
  'tools.takeBack': 'Deshacerlo',
  'tools.takenBack': 'Todo está como antes de abrir el archivo.',
  'tools.refused': '«{name}» no se ha abierto. Todo está como estaba.',
  'tools.partly':
    'En «{name}» {count, plural, one {una cosa no se ha podido leer} other {# cosas no se han podido leer}}. Todavía no ha cambiado nada.',
  'tools.openRest': 'Abrir lo que se ha podido leer',
  'tools.leave': 'Dejar todo como está',
  'tools.problemAt': '{path, select, none {} other {{path}: }}{message}',
  'tools.moreProblems': 'y {count, number} más',

  'tools.tables': 'Tablas para una hoja de cálculo',
  'tools.tablesHow': 'Cada una es un archivo CSV con la unidad en cada encabezado.',
  'tools.table.inks': 'Tintas y cuerpos',
  'tools.table.traps': 'Atrapado en peso',
  'tools.table.films': 'Películas en cada parche',
  'tools.table.strip': 'Densidades y color',
  'tools.manner': 'Números escritos como',
  'tools.manner.point': '1.5, celdas separadas por comas',
  'tools.manner.comma': '1,5, celdas separadas por punto y coma',

  'tools.pictures': 'Imágenes para guardar',
  'tools.picturesHow':
    'Todas las imágenes de la parte de la página que está abierta, dibujadas para papel blanco. En SVG son nítidas a cualquier tamaño y sus palabras siguen siendo palabras; PNG es para los programas que no admiten SVG.',
  'tools.pictureWhich': 'Imagen',
  'tools.picturesNone': 'Esta parte de la página no tiene ninguna imagen en este momento.',
  'tools.pictureWidth': 'Anchura impresa, mm',
  'tools.pictureCaption': 'Texto al pie',
  'tools.pictureSvg': 'Guardar como SVG',
  'tools.picturePng': 'Guardar como PNG, 300 puntos por pulgada',
  'tools.pictureWidthWrong': '«{given}» no es una anchura; se admiten de {least, number} a {most, number} mm.',
  'tools.pictureSetUp': '{inks}; papel {paper}; {speed} m/s; {sheet}.',
  'tools.pictureInk': '{name} {tack}',
  'tools.pictureCredit': 'Calculado por Tackstair, un modelo didáctico.',
  'tools.picture.section': 'Sección en la línea de contacto',
  'tools.picture.loupe': 'Cuentahílos',
  'tools.picture.line': 'Línea de la máquina',
  'tools.picture.pulls': 'Fuerzas en la línea de contacto',
  'tools.picture.stair': 'Escalera de tiros',
  'tools.picture.strip': 'Tira de control',
  'tools.pictureShows.section':
    'La línea de contacto del cuerpo {unit}, {name}, en corte: mantilla, películas y papel a escala.',
  'tools.pictureShows.loupe': 'Un milímetro del pliego después del cuerpo {unit}, {name}.',
  'tools.pictureShows.line':
    'La máquina de lado con {units, plural, one {# cuerpo} other {# cuerpos}}; el pliego está en el cuerpo {unit}, {name}.',
  'tools.pictureShows.pulls': 'La fuerza que aguantan cada película y el papel en el cuerpo {unit}, {name}, en barras.',
  'tools.pictureShows.stair':
    'Los tiros de {units, plural, one {la tinta} other {las # tintas}} como escalera, el primer cuerpo a la izquierda.',
  'tools.pictureShows.strip': 'Los parches de la tira de control con las letras de las tintas de cada uno.',
  'tools.pictureTooLarge': 'este navegador no hace imágenes de ese tamaño.',
  'tools.pictureFailed': 'No se ha podido dibujar la imagen: {reason}',

  'tools.report': 'Informe en papel',
  'tools.reportHow': 'La configuración, sus lecturas y el enlace a ella, en una o dos hojas.',
  'tools.print': 'Imprimir el informe',
  'tools.reportTitle': 'Configuración de una máquina, y lo que imprime',
  'tools.reportFrom': 'Calculado por un modelo para aprender, no medido en una máquina.',
  'tools.reportPaper': 'Papel',
  'tools.reportPress': 'Máquina',
  'tools.reportSheet': 'Pliego leído',
  'tools.reportSheetIs':
    '{reading, select, first {el primer pliego} settled {con todo ya estable} other {pliego {reading}}}',
  'tools.reportInterval': 'tiempo entre cuerpos {seconds} s',
  'tools.reportLink': 'Para abrirlo otra vez',
}
