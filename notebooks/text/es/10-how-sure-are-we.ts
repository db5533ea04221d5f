export const words = {
  file: 'qué seguridad',
  title: '10 · ¿Qué seguridad tenemos?',
  question:
    'El modelo dice un solo número. ¿Cuánto puede errar, si sus propios números se conocen solo entre límites?',
  intro: `<p>Cada número del modelo tiene un intervalo en las tablas. Si se sortean todos de nuevo, se simula, y se repite muchas veces, las
    simulaciones se dispersan. El sistema inventado es un biofiltro nuevo, arrancado con peces y 30 g de alimento al día.</p>`,
  given: '<p>Con cada número en su mejor valor, el pico del nitrito es de {best} mg N/L.</p>',
  status: '{done} de {all} simulaciones',
  ask: 'En 40 simulaciones con números sorteados, ¿qué altura tiene el pico de nitrito más alto?',
  guess: { label: 'Mi predicción', unit: 'mg N/L' },
  shown: `<p>Los picos de {count} simulaciones están entre {lowest} y {highest} mg N/L. La banda sombreada contiene cada día nueve de cada diez.
    Donde su borde superior aún sube al final, algunas simulaciones no se han librado del nitrito en 90 días.</p>`,
  sliders: {
    level: { label: 'El nitrito debe quedar por debajo de', unit: 'mg N/L' },
    feed: { label: 'Alimento', unit: 'g/d' },
    seeded: { label: 'Biopelícula ya crecida que se trae', unit: '% de un biofiltro lleno' },
  },
  below:
    '<p>{below} de las {count} simulaciones sorteadas del sistema de arriba quedan por debajo de {level} mg N/L.</p>',
  changed:
    '<p>La simulación con los mejores valores de su sistema tiene su pico en {peak} mg N/L el día {day}.</p>',
  wrong: [
    'Tomar la banda por la verdad. Contiene lo que dicen los intervalos de las tablas; lo que el modelo omite no está en ninguna banda (lección 12).',
    'Sortear cada número por su cuenta. En la naturaleza algunos van juntos, y la banda es entonces demasiado ancha o demasiado estrecha.',
    'Cuarenta simulaciones dicen bien el centro y mal los bordes.',
  ],
  caution:
    'Con peces en el estanque, planifique para el borde malo de la banda, no para su centro. La ley de bienestar animal no conoce la mediana.',
  exercise:
    '¿A qué altura debe estar el nivel para que 36 de las 40 simulaciones queden por debajo? ¿Qué porcentaje es?',
  answer: `<p>36 de 40 es el {share} %. Por encima de {level} mg N/L en el control la cuenta es 36. Ese nivel, y no los {best} de la mejor
    simulación, es para el que hay que planificar.</p>`,
  sources: '<p>Cada número sorteado tiene su intervalo junto a su fuente. Esta simulación leyó estos:</p>',
  readings: [
    'nivel, mg N/L',
    'simulaciones por debajo, de 40',
    'alimento, g/d',
    'biopelícula traída, %',
    'pico con los mejores valores, mg N/L',
  ],
  labels: {
    chart: 'Nitrito: el centro de las simulaciones y la banda que contiene nueve de cada diez',
    chartNow: 'Nitrito con lo que usted eligió, mejores valores',
    unit: 'nitrito, mg N/L',
    best: 'mejores valores',
    median: 'mediana',
    yours: 'su sistema',
    above: 'el de arriba',
    level: 'su nivel',
  },
} as const;
