/** Packages for learning systems, in Spanish. */
import type { learningSystem as english } from '../en/learning-system.ts'
import type { Translated } from '../translated.ts'

export const learningSystem: Translated<typeof english> = {
  'system.title':
    'Tackstair: {count, plural, =0 {ejercicios de averías} one {{first}} other {# lecciones sobre el orden de las tintas}}',
  'system.description':
    'Un banco interactivo en el que se imprimen tintas sobre tintas húmedas. {lessons, plural, =0 {} one {Una lección. } other {# lecciones. }}{drills, plural, =0 {} one {Un ejercicio de averías. } other {# ejercicios de averías. }}Es un modelo didáctico: no ajustes una máquina con él.',
  'system.drill': 'Ejercicio de averías {number}',
  'system.asksOfDrill': '¿Qué falla en este trabajo y qué lo prueba?',
  'system.readme':
    'Tackstair para una plataforma de aprendizaje ({standard}).\n\nSube este zip, sin abrirlo, a la plataforma como paquete de esa norma. Funciona en el ordenador de quien aprende y envía sus resultados a esa plataforma y a ningún otro sitio.\n\nContiene:\n{list}\n\n{mastery}\n\nAbierto por sí solo, {page} es la página normal, con todo.\n',
  'system.readmeMastery':
    'Nota para aprobar: {percent}. La puntuación es la parte de preguntas resueltas a la primera y sin pistas.',
  'system.readmeNoMastery': 'No tiene nota para aprobar: se completa cuando todo está hecho.',

  'system.here': 'Tus resultados van a la plataforma de aprendizaje que abrió esta página, y a ningún otro sitio.',
  'system.hereLooking': 'La plataforma ha abierto esta página solo para mirar. Nada cuenta y no se envían resultados.',
  'system.state.opening': 'Esperando a la plataforma.',
  'system.state.saving': 'Enviando.',
  'system.state.saved': 'Todo ha llegado allí.',
  'system.state.waiting':
    'La plataforma no responde por ahora. Tu trabajo se conserva {where, select, browser {en este navegador} other {en esta página}} y se vuelve a enviar solo.',
  'system.state.closed':
    'Para la plataforma esta visita ha terminado. Lo que hagas ahora se conserva {where, select, browser {en este navegador y se envía cuando vuelvas a abrir la página desde allí} other {solo en esta página; descarga tus resultados}}.',
  'system.state.ended': 'La visita ha terminado. Puedes cerrar esta página.',
  'system.leftOut.benches': 'Tiene poco sitio: allí no se conserva cómo dejaste los bancos de otras lecciones.',
  'system.leftOut.tries': 'Tiene poco sitio: allí no se conservan los bancos de otras lecciones ni cada intento.',
  'system.leftOut.old answers':
    'Tiene poco sitio: allí no se conservan bancos, intentos ni respuestas de otras lecciones.',
  'system.leftOut.open bench': 'Tiene poco sitio: allí no se conservan bancos, intentos ni respuestas anteriores.',
  'system.leftOut.all answers': 'Tiene poco sitio: allí se conservan tu lugar y tus resultados, no tus respuestas.',
  'system.leftOut.old drills': 'Tiene poco sitio: allí se conservan tu lugar, tus resultados y los últimos ejercicios.',
  'system.leftOut.counts': 'Tiene poco sitio: allí solo se conservan tu lugar y tus resultados.',
  'system.tryNow': 'Enviar ahora',
  'system.download': 'Descargar resultados',
  'system.end': 'Terminar esta visita',
  'system.label': 'Plataforma de aprendizaje',

  'system.aside.title':
    '{count, plural, =0 {No se conserva ningún intento anterior} one {Hay respuestas de un intento anterior que no han llegado} other {Hay respuestas de # intentos anteriores que no han llegado}}',
  'system.aside.is':
    'La plataforma ha empezado un intento nuevo y ya no acepta nada del anterior. {where, select, browser {Tu trabajo de entonces se conserva {days} días en este navegador} other {Tu trabajo de entonces solo se conserva en esta página}}: guárdalo como archivo de resultados para tu docente o quítalo.',
  'system.aside.crowdedOut':
    'El más antiguo, de {moment}, se pierde al cerrar esta página: no se conservan más de {most}. Guárdalo ahora si lo necesitas.',
  'system.aside.of': '{moment}: {answers, plural, one {una respuesta} other {# respuestas}} sin enviar',
  'system.aside.drills': '{count, plural, one {un ejercicio de averías} other {# ejercicios de averías}}',
  'system.aside.save': 'Guardar como archivo de resultados',
  'system.aside.remove': 'Quitar',
  'system.aside.removed': 'Quitado: el intento de {moment}.',
  'system.aside.putBack': 'Volver a ponerlo',

  'system.pack': 'Paquete para una plataforma de aprendizaje',
  'system.packHow':
    'Un archivo zip para subirlo a una plataforma de aprendizaje. Contiene esta página y las lecciones y ejercicios que elijas, y dice a la plataforma hasta dónde ha llegado cada alumno. Se hace aquí y no se envía nada.',
  'system.standard': 'Norma',
  'system.standard.scorm-1.2': 'SCORM 1.2 (casi todas las plataformas)',
  'system.standard.scorm-2004': 'SCORM 2004, 4.ª edición',
  'system.standard.cmi5': 'cmi5 (con un almacén de registros de aprendizaje)',
  'system.lessons': 'Lecciones',
  'system.drills': 'Ejercicios de averías',
  'system.mastery': 'Nota para aprobar en tanto por ciento; vacío si no hay',
  'system.make': 'Hacer el paquete',
  'system.made': 'El paquete está hecho.',
  'system.nothing': 'Elige una lección o al menos un ejercicio de averías.',
  'system.drillsAllowed': '{given} no vale; valen números enteros de 0 a {most}.',
  'system.masteryAllowed': '{given} no es una nota para aprobar; valen números de 0 a 100, o nada.',
  'system.noFile':
    'El paquete necesita la página en un solo archivo, y no hay ninguno junto a esta página. Pon tackstair.html (npm run build:file) a su lado, o abre ese archivo y haz el paquete allí.',
}
