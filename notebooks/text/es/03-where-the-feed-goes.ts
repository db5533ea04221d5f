export const words = {
  file: 'el alimento',
  title: '03 · Adónde va el alimento',
  question:
    'De cada 100 g de nitrógeno que da a los peces, ¿cuántos gramos se come usted en forma de lechuga?',
  intro: `<p>Un pequeño sistema inventado: 30 tilapias de 150 g, 60 g de alimento al día, un biofiltro y 4 m² de lechuga en camas
    flotantes, cortada en cuatro lotes. Nadie saca lo que sedimenta.</p>`,
  ask: '¿Cuánto de 100 g de nitrógeno está en la lechuga cortada después de 90 días?',
  guess: { label: 'Mi predicción', unit: 'g de 100 g' },
  shown: `<p>La lechuga cortada tiene {crop} g de 100, los peces {fish}, y {gas} se fueron como gas: en los sólidos sedimentados, donde no
    llega el oxígeno, las bacterias respiran nitrato.</p>`,
  sliders: { feed: { label: 'Alimento', unit: 'g/d' }, planted: { label: 'Plantado', unit: 'm²' } },
  changed: `<p>Lechuga cortada: {crop-now} %. Son {area} g de alimento al día por cada metro cuadrado. El nitrato va de 20 a {end}
    mg/L.</p>`,
  wrong: [
    'Que el nitrato no se mueva no significa que no se pierda nada: el gas y el lodo pueden llevarse tanto como el cultivo.',
    'Más alimento sobre la misma cama no da más lechuga si el cultivo ya tiene bastante: da lodo.',
    'Que el nitrato baje no significa que se alimente poco: puede ser el lodo, que lo consume.',
    'Cuánto se va como gas es la parte que peor se conoce: el modelo puede errar en los dos sentidos (lección 12).',
  ],
  caution:
    'Lávese las manos y lave la cosecha; que el agua del estanque no toque lo que se come crudo. Deciden las normas locales de inocuidad de los alimentos.',
  exercise:
    'Los 4 m² están plantados. Usted da 20, 40, 80 o 120 g/d. ¿Con cuál de ellos queda más nitrato después de 90 días?',
  answer: `<p>Con {most} g/d, es decir, {area} g/d por m². Hasta ahí más alimento trae más nitrato; más allá, el lodo es tan grueso que
    consume más de lo que llega. Los manuales dan {rule} g/(m² d) y más para cultivos de hoja: en sistemas que sacan los sólidos. Aquí
    nadie los vacía.</p>`,
  readings: ['alimento, g/d', 'plantado, m²', 'lechuga, %', 'gas, %', 'nitrato al final, mg N/L'],
  labels: {
    bars: 'Adónde fue el nitrógeno en 90 días',
    barsNow: 'Adónde fue el nitrógeno',
    chart: 'Nitrato en el sumidero',
    unit: 'nitrato, mg N/L',
    nitrate: 'nitrato',
    nitrateBy: 'Nitrato después de 90 días',
    fed: 'alimento, g/d',
  },
} as const;
