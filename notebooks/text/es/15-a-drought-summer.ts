export const words = {
  file: 'un verano de sequía',
  title: '15 · Un verano de sequía',
  question: 'La ración no cubrirá lo que el sistema pierde hasta el otoño. ¿A qué renuncia usted?',
  intro: `<p>Es el primero de 120 días secos. El ayuntamiento permite 20 L al día. El sistema con 4 m² de lechuga pierde casi 30 y guarda
    1000 L en su sumidero, sobre una bomba que aspira aire a los 100 L. Usted ve bajar el nivel durante un mes. El día 30 puede hacer
    una cosa, para el resto del verano.</p>`,
  ask: '¿Qué única cosa hace que el agua dure más?',
  choices: [
    'Dar la mitad del alimento',
    'Sacar la mitad de los peces y alimentar al resto como antes',
    'Cortar la lechuga y dejar las camas en barbecho',
    'Ninguna: el agua se acaba el mismo día',
  ],
  replies: [
    'Los peces no beben agua que valga la pena contar: el alimento hace amonio, no pérdida.',
    'Los peces no beben agua que valga la pena contar.',
    'El agua se va por las hojas.',
    'Una de ellas sí: pregúntese por dónde se va el agua.',
  ],
  shown: `<p>El sistema plantado pierde hasta {before} L al día, con las camas vacías {after}: menos que los {ration} que llegan, así que el
    sumidero vuelve a llenarse. Dar la mitad del alimento no ahorra agua. No es inútil: si la bomba se para de todos modos, el amonio llega
    a {tan-halved} mg N/L en lugar de {tan-none}. Así que: barbecho por el agua, menos alimento por el riesgo, y las dos cosas antes de que
    el sumidero esté bajo, no después.</p>`,
  sliders: {
    ration: { label: 'Agua permitida', unit: 'L/d' },
    fallow: { label: 'Camas en barbecho desde el día (120: nunca)', unit: 'd' },
    feed: { label: 'Alimento desde el día 30', unit: '% de lo de antes' },
    et0: { label: 'Evaporación al aire libre (ET₀)', unit: 'mm/d' },
  },
  runs: '<p>La bomba funciona todo el verano.</p>',
  trips: '<p>La bomba aspira aire el día {trip}.</p>',
  changed: `<p>Amonio máximo {tan} mg N/L, nitrato al final {nitrate} mg N/L. El último día se pierden {loss} L.</p>`,
  wrong: [
    'Esperar. Cada día de espera cuesta lo que hará falta en el mes más seco.',
    'Rellenar con agua de un pozo que nadie ha analizado: la sal se queda cuando el agua se va.',
    'Dejar las camas vacías abiertas al sol: siguen perdiendo agua. Cúbralas; el modelo no las cubre por usted.',
    'Las camas en barbecho no toman nitrato. Vigile el nitrato y la alcalinidad (lección 06), y en otoño plante por pasos.',
  ],
  caution:
    'Recortar el alimento y cosechar antes afecta al bienestar de los peces: por pasos, observando a los animales, según su legislación. Mantenga en el estanque un aire que no dependa de la bomba. El agua que se vierte va adonde diga la ley local.',
  exercise:
    '¿Cuál es el último día, de cinco en cinco, en que se pueden dejar las camas en barbecho sin que la bomba aspire aire nunca?',
  answer: `<p>El día {latest}: el sumidero baja entonces hasta {lowest} L. Es demasiado justo: una semana más de calor, y se seca. Mueva ET₀ en
    0,5 y mire.</p>`,
  readings: [
    'ración, L/d',
    'barbecho desde el día',
    'alimento, %',
    'la bomba aspira aire, día',
    'amonio máximo, mg N/L',
  ],
  labels: {
    inlet: 'toma de la bomba',
    sumpChart: 'Agua en el sumidero durante el verano',
    sumpNow: 'Agua en el sumidero con lo que usted eligió',
    sumpUnit: 'sumidero, L',
    nothing: 'sin hacer nada',
    halved: 'mitad de alimento',
    fewer: 'mitad de peces',
    fallow: 'camas en barbecho',
    acted: 'usted actúa',
    yours: 'lo suyo',
    never: '(nunca)',
    compared: 'Una sola cosa hecha el día 30',
    trip: 'la bomba aspira aire, día',
    loss: 'pérdida al final, L/d',
    tan: 'amonio máximo, mg N/L',
    nitrate: 'nitrato al final, mg N/L',
  },
} as const;
