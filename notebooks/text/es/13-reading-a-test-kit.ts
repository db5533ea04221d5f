export const words = {
  file: 'un kit de análisis',
  title: '13 · Leer un kit de análisis',
  question: 'Dos estanques muestran el mismo color en el mismo análisis. ¿Es igual el agua?',
  intro: `<p>Un kit de amonio mide juntos el amoníaco y el amonio: el nitrógeno amoniacal total, TAN. Solo la parte libre, NH₃, atraviesa las
    branquias y envenena; la parte cargada, NH₄⁺, apenas. Cuánto es libre depende del pH y de la temperatura. Otra trampa es qué se
    cuenta: el nitrógeno o el ion entero.</p>`,
  ask: 'Dos estanques de 26 °C muestran 1 mg/L de TAN cada uno. Uno tiene pH 7,0 y el otro pH 8,5. ¿Cuántas veces más amoníaco libre hay en el segundo?',
  guess: { label: 'Mi predicción', unit: 'veces' },
  shown: `<p>A pH 7,0 son libres {low} µg/L, a pH 8,5 son {high} µg/L: {times} veces más, en un agua que muestra el mismo color. La tilapia no
    debería vivir mucho tiempo por encima de {limit} µg/L (como nitrógeno). Una lectura de TAN sin pH ni temperatura dice poco.</p>`,
  steps: `<p>Un color es un paso, no un número: lo que está más cerca de él que de sus vecinos se ve como él. Y el nitrato «como NO₃» es
    {factor} veces el nitrógeno que contiene: la tabla da los dos. (Pasos de una carta corriente; la suya puede ser otra.)</p>`,
  sliders: {
    tan: { label: 'El kit muestra TAN', unit: 'mg N/L' },
    pH: { label: 'pH', unit: '' },
    temperature: { label: 'Agua', unit: '°C' },
    nitrate: { label: 'El kit muestra nitrato', unit: 'mg/L como NO₃' },
  },
  changed: `<p>Amoníaco libre: {free} µg N/L, {times} veces aquello en lo que la tilapia debería vivir mucho tiempo. Ese nitrato son {nitrate}
    mg N/L.</p>`,
  inSystem: `<p>El sistema inventado, después de 30 días a {temperature} °C, mostraría un TAN de {tan} mg N/L a pH {pH}, de los que {free} son
    libres.</p>`,
  wrong: [
    'Dosificar base porque el pH está bajo, mientras el TAN está alto: el pH sube y el amonio inofensivo se vuelve amoníaco.',
    'Analizar solo por la mañana: el pH y la temperatura son más altos por la tarde, y el amoníaco libre también.',
    'Reactivos viejos, un tubo sucio, mirar a la luz de una lámpara. Analice de vez en cuando el grifo y una botella de concentración conocida.',
    'Comparar su «40» con un libro que cuenta nitrógeno.',
  ],
  caution:
    'Los reactivos de los kits son tóxicos y cáusticos: guantes, gafas, una botella para los residuos; ni al estanque ni al huerto. Si los peces boquean, no espere a un análisis: airee, deje de alimentar, cambie despacio un poco de agua.',
  exercise:
    'Un kit muestra 50 mg/L de nitrato «como NO₃». Un libro dice que los cultivos crecen bien con 50 mg N/L. ¿Es lo mismo?',
  answer: `<p>No. 50 mg/L como NO₃ son {nitrogen} mg N/L; 50 mg N/L se leerían como {wrong} en ese kit. El factor es {factor}.</p>`,
  readings: ['TAN leído, mg N/L', 'pH', 'agua, °C', 'amoníaco libre, µg N/L', 'nitrato, mg N/L'],
  labels: {
    chart: 'Parte libre del TAN según el pH',
    chartNow: 'Parte libre del TAN según el pH, con su temperatura',
    share: 'libre, % del TAN',
    warm: '26 °C',
    yours: '{temperature} °C',
    one: 'un estanque',
    other: 'el otro',
    yourPH: 'su pH',
    card: 'Lo que dice un color de la carta de nitrato',
    shows: 'muestra, como NO₃',
    asN: 'mg N/L',
    from: 'desde',
    to: 'hasta',
  },
} as const;
