export const words = {
  file: 'un registro',
  title: '11 · Su propio registro',
  question:
    'Usted tiene un cuaderno de análisis de agua. ¿Qué historia de su sistema encaja con ellos, y cuáles no pueden distinguir?',
  intro: `<p>El registro de abajo es inventado: una simulación con valores que aquí no se dicen, leída cada cinco días con los errores y los
    pasos de un kit de gotas. Ponga el suyo en su lugar si lo tiene; no sale de esta página.</p>`,
  read: '{readings} lecturas leídas, {odd} extrañas.',
  ask: 'Con 30 g de alimento al día, un 1 % de la biopelícula y agua de 26 °C, el modelo pone el pico del nitrito antes y más abajo que este registro. ¿Qué puede estar mal por sí solo?',
  choices: [
    'Solo la temperatura',
    'Solo las bacterias del comienzo',
    'Cualquiera de las dos: el registro solo quizá no lo diga',
    'Solo el alimento',
  ],
  replies: [
    'Menos bacterias al comienzo harían lo mismo.',
    'Un agua más fría haría lo mismo.',
    'Un agua más fría y menos bacterias al comienzo retrasan los picos por igual.',
    'El alimento sube los picos; apenas los mueve en el tiempo.',
  ],
  shown: `<p>Los puntos son el registro, las líneas el modelo tal como estaba puesto. Ahora enfríe el agua, o empiece con menos bacterias, y
    verá que cualquiera de las dos lleva las líneas a los puntos.</p>`,
  sliders: {
    feed: { label: 'Alimento dado de verdad', unit: 'g/d' },
    seeded: { label: 'Biopelícula al comienzo', unit: '% de un biofiltro lleno' },
    temperature: { label: 'Agua', unit: '°C' },
  },
  changed: `<p>Desajuste: amonio {ammonia}, nitrito {nitrite}, nitrato {nitrate} mg N/L; solo cuenta lo que queda fuera del paso del kit. El
    nitrito del modelo tiene su pico el día {day}, con {high} mg N/L.</p>`,
  fit: `<h2>Deje que lo ajuste la biblioteca</h2><p>Busca los tres valores que hacen más verosímiles las lecturas, dice con qué precisión los conoce
    el registro, y cuáles dos no puede distinguir. Después, otra vez para quien tiene un termómetro y conoce la temperatura.</p>`,
  apart: '<p>Distingue los tres.</p>',
  entangled: `<p>No puede distinguir {a} de {b}: sus errores van juntos (correlación {correlation}). Muchos pares de los dos ajustan casi
    igual de bien. La banda es la de alrededor de uno de ellos, y no muestra a qué distancia están los otros.</p>`,
  spoilt: `<p>De {readings} lecturas el ajuste da por estropeadas {blind} sin el termómetro y {measured} con él.</p>`,
  wrong: [
    'Un buen ajuste con valores equivocados. Dos controles que hacen lo mismo con lo que usted midió no se pueden distinguir; mida uno de ellos (un termómetro es barato).',
    'Unidades: un kit puede mostrar el amonio como NH₃ o el nitrato como NO₃. Escriba la unidad en el encabezado.',
    'Los kits tienen pasos y caducan. «0» significa menos de medio paso.',
    'Ajustar los días que se tienen y fiarse de ello para el año que viene.',
  ],
  caution: 'Los reactivos de los kits son tóxicos y cáusticos; no van al estanque ni al huerto.',
  exercise: 'Encuentre los valores del registro inventado. ¿Cuáles dos se pueden cambiar el uno por el otro?',
  answer: `<p>Se hizo con {feed} g/d, {seeded} % y {temperature} °C. La temperatura y las bacterias del comienzo se compensan: las dos mueven
    los picos en el tiempo. El alimento se nota en el nitrato del final.</p>`,
  readings: [
    'alimento, g/d',
    'biopelícula, %',
    'agua, °C',
    'desajuste amonio',
    'desajuste nitrito',
    'desajuste nitrato',
  ],
  labels: {
    log: 'El registro',
    model: 'modelo',
    ammoniaChart: 'Amonio, registro y modelo',
    ammoniaUnit: 'amonio, mg N/L',
    nitriteChart: 'Nitrito, registro y modelo',
    nitriteUnit: 'nitrito, mg N/L',
    nitrateChart: 'Nitrato, registro y modelo',
    nitrateUnit: 'nitrato, mg N/L',
    fitIt: 'Ajustar',
    blind: 'Sin termómetro',
    measured: 'Con el agua medida',
    fitted: 'ajustado',
    best: 'mejor valor',
    band: 'nueve de cada diez',
    says: 'el registro dice',
    stays: 'casi nada',
    narrowed: 'está en esta banda',
    moved: 'no es el centro del intervalo',
    feed: 'alimento',
    biofilm: 'biopelícula al comienzo',
    waterTemperature: 'temperatura del agua',
  },
} as const;
