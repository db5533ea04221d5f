export const words = {
  file: 'un biofiltro',
  title: '09 · Dimensionar un biofiltro antes de comprarlo',
  question: 'Usted dará 150 g de alimento al día. ¿Cuántos litros de soportes de plástico tiene que comprar?',
  intro: `<p>El manual calcula: el amonio del alimento, entre lo que elimina un metro cuadrado, entre los metros cuadrados de un litro. El
    modelo simula 90 días y mira el agua. Los dos saben cosas que el otro no sabe.</p>`,
  ask: '¿Cuántos litros de soportes mantienen el amonio en 0,5 mg N/L o menos el día 90, a 24 °C?',
  guess: { label: 'Mi predicción', unit: 'L' },
  shown: `<p>La búsqueda en el modelo termina en {search} L después de {trials} simulaciones; la cuenta del manual da {handbook} L. La tasa
    del manual es la de un nivel de amonio: cuanto más bajo es el nivel que se quiere, menos hace cada metro cuadrado. El modelo lo sabe;
    sabe también que las paredes y las camas flotantes llevan biopelícula, y que lo que crece sobre la materia orgánica cubre una parte.
    Lea también el veredicto: una meta en amonio no dice nada de cuánto de él es libre (lección 13).</p>`,
  sliders: {
    feed: { label: 'Alimento', unit: 'g/d' },
    media: { label: 'Soportes', unit: 'L' },
    temperature: { label: 'Agua', unit: '°C' },
  },
  changed: `<p>El día 90 el amonio es {tan} y el nitrito {nitrite} mg N/L. El manual compraría {handbook-now} L.</p>`,
  wrong: [
    'Dimensionar para el alimento de hoy. Los peces crecen, y el alimento con ellos.',
    'Dimensionar para el verano. La biopelícula fría trabaja más despacio; mueva la temperatura.',
    'Comprar justo lo que dice el modelo: las bombas se paran y las camas se limpian. Tome la respuesta mayor y una reserva.',
  ],
  caution:
    'El número de un modelo no es una promesa para un pez. Mida amonio y nitrito mientras sube el alimento.',
  exercise: 'El invierno es de 20 °C, o de 18 °C. ¿Qué dice entonces la búsqueda?',
  answer: `<p>{warm} L a 24 °C, {winter} L a 20 °C y {cold} L a 18 °C, con el mismo alimento y la misma meta. Cerca de 17 °C estos peces dejan
    de comer: lo que dejan se pudre, y lo que crece encima cubre la película. Dé lo que comen, no más.</p>`,
  rates:
    '<p>Las tasas publicadas por metro cuadrado van de {low} a {high} g al día: una razón más para una reserva.</p>',
  readings: ['alimento, g/d', 'soportes, L', 'agua, °C', 'amonio el día 90, mg N/L', 'manual, L'],
  labels: {
    none: 'ningún tamaño hasta 150',
    goal: 'meta',
    chart: 'Amonio después de 90 días según el tamaño del biofiltro',
    unit: 'amonio el día 90, mg N/L',
    litres: 'litros de soportes',
    model: 'el modelo',
    you: 'usted',
    chartNow: 'Amonio y nitrito con su biofiltro',
    ammonia: 'amonio',
    nitrite: 'nitrito',
  },
} as const;
