/** The page around the views, in Spanish. */
import type { page as english } from '../en/page.ts'
import type { Translated } from '../translated.ts'

export const page: Translated<typeof english> = {
  'page.title': 'Tackstair',
  'page.views': 'Partes de la página',
  'page.menu': 'Menú',
  'page.bench': 'Banco',
  'page.strip': 'Tira',
  'page.orders': 'Secuencias',
  'page.trials': 'Ensayos',
  'page.run': 'Tirada',
  'page.lessons': 'Lecciones',
  'page.drills': 'Defectos',
  'page.instruments': 'Aparatos',
  'page.lecture': 'Clase',
  'page.glossary': 'Glosario',
  'page.loading': 'Cargando…',
  'page.notLoaded':
    'No se ha podido cargar esta parte de la página. Vuelve a cargarla cuando haya conexión; tu borrador vuelve con ella.',
  'page.loadAgain': 'Volver a cargar la página',
  'page.stillAway': 'Todavía no responde nada. La página se queda como está.',
  'page.linkProblems': 'No se ha podido usar todo el enlace',
  'page.close': 'Cerrar',
  'page.firstLook': 'Vistazo',
  'page.undone': 'Se ha deshecho el último cambio.',
  'page.redone': 'El cambio se ha vuelto a hacer.',

  'glossary.heading': 'Palabras del oficio',
  'glossary.find': 'Buscar una palabra',
  'glossary.count': '{count, plural, =0 {Ninguna palabra coincide.} one {# palabra} other {# palabras}}',
  'glossary.see': 'Dónde se ve: {see}',
  'glossary.related': 'Véase también:',
  'glossary.source': 'Fuente: {source}',
}
