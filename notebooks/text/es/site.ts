export const site = {
  name: 'Español',
  title: 'Lecciones',
  all: 'Todas las lecciones',
  intro: `<p>Cada lección pregunta, le deja predecir, muestra qué dice el modelo y le da controles para cambiarlo. El modelo funciona en
    esta página, en su equipo; no se envía nada a ninguna parte. Todos los sistemas son inventados.</p>`,
  groups: {
    begin: 'Para empezar',
    nitrogen: 'Nitrógeno',
    filter: 'El biofiltro',
    water: 'Agua',
    design: 'Diseño',
    trust: 'Hasta dónde fiarse',
  },
  teacher: 'Para el docente: una clase de 90 minutos',
  worksheets: 'Hojas de trabajo para imprimir',
  answers: 'Respuestas para el docente',
  answersNote:
    'Solo para el docente: cada respuesta tal como la da hoy el modelo, calculada en esta página. Tarda un minuto.',
  sheetsNote:
    'Una hoja por lección y un registro para el invernadero. No contienen ninguna respuesta. Imprima esta página; cada hoja empieza en papel nuevo.',
  print: 'Imprimir',
  log: 'Registro de análisis de agua',
  logNote: `<p>Una línea cada vez que analice. Escriba lo que muestra el kit, con sus pasos (<code>0.25</code>, <code>&lt;0.25</code>,
    <code>10-20</code>; el decimal con punto); una casilla vacía significa «no analizado»; un alimento de 0, «no se dio de comer».
    Pasado al archivo con las mismas columnas lo lee <code>leat log</code>, con el mapa que dice qué contienen, y también la página
    de Leat.</p>`,
  logFile: 'registro.csv',
  mapFile: 'registro.map',
  single: 'En un solo archivo',
  singleNote: 'La lección entera en un archivo: se abre desde un disco o una memoria USB, sin red.',
  singleAll: 'Todas las lecciones en un archivo',
  footer: `Todos los sistemas son inventados. Leat es un modelo de recipientes bien mezclados con promedios publicados: una ayuda para
    enseñar, no una garantía. El bienestar de los peces, la inocuidad de los alimentos, los vertidos y la electricidad se rigen por su
    legislación y por profesionales autorizados.`,
  noScript: 'La lección necesita JavaScript: el modelo funciona en esta página.',
  language: 'Idioma',
};

export const logColumns = {
  date: 'fecha',
  ammonia: 'TAN (mg N/L)',
  nitrite: 'nitrito (mg N/L)',
  nitrate: 'nitrato (mg N/L)',
  pH: 'pH',
  alkalinity: 'alcalinidad (mg/L como CaCO3)',
  temperature: 'temperatura (°C)',
  feed: 'alimento (g)',
  notes: 'notas',
};
