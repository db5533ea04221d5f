export const words = {
  file: 'peces de golpe',
  title: '08 · Peces de golpe',
  question: 'Usted triplica sus peces en un día. ¿Qué hace el biofiltro, y ayuda traerlos por pasos?',
  intro: `<p>Un biofiltro crece hasta su carga, mientras lleguen oxígeno y amonio a sus películas. El sistema inventado tiene 30 peces que
    reciben 40 g al día sobre un biofiltro pequeño y ya crecido, con 10 L de soportes. El día 20 llegan sesenta más y el alimento se
    triplica.</p>`,
  ask: 'La carga se triplica el día 20. ¿Hasta dónde sube el amonio en el estanque?',
  guess: { label: 'Mi predicción', unit: 'mg N/L' },
  shown: `<p>Estaba en {before} y llegó a {peak} mg N/L el día {peak-day}. Tres semanas después está en {after}, y al final en {end}: no
    vuelve adonde estaba. La joroba son bacterias que faltaban y que crecieron. El nivel es su comida de camino: tres
    veces más amonio atraviesa el agua quieta sobre una película solo si hay más en el agua de fuera.</p>`,
  sliders: {
    added: { label: 'Peces añadidos', unit: 'peces' },
    steps: { label: 'Pasos, uno por semana', unit: 'número' },
    media: { label: 'Soportes en el biofiltro', unit: 'L' },
  },
  changed: `<p>Amonio máximo {tan}, nitrito máximo {nitrite} mg N/L; oxígeno mínimo {oxygen} mg/L.</p>`,
  wrong: [
    'Dar la ración completa a los recién llegados el primer día. El amonio lo hace el alimento, no el número de peces.',
    'Más peces respiran enseguida más oxígeno; las bacterias del biofiltro también.',
    'Esperar a que el amonio vuelva adonde estaba. Un biofiltro con más carga está en un nivel más alto; solo más superficie lo baja.',
    'Fiarse de la reserva que aquí guarda un biofiltro crecido: cuánta tiene el suyo, el modelo no lo sabe.',
  ],
  caution:
    'La densidad de peces, el transporte y la cuarentena son cosa de la ley y de profesionales autorizados. Los recién llegados traen enfermedades.',
  exercise: '¿Es mejor traer 60 peces en tres pasos, o doblar los soportes el día en que llegan?',
  answer: `<p>Los pasos quitan la joroba y dejan el nivel; los soportes bajan el nivel. Aquí estaban en el agua y cubiertos desde el día 0;
    los soportes limpios que se meten ese día aún no tienen bacterias. El día 48 es dos semanas después de llegar los últimos
    peces.</p>`,
  readings: ['peces añadidos', 'pasos', 'soportes, L', 'amonio máximo, mg N/L', 'oxígeno mínimo, mg/L'],
  labels: {
    chart: 'Amonio y nitrito alrededor del día en que llegan los peces',
    chartNow: 'Amonio y nitrito con lo que usted eligió',
    ammonia: 'amonio',
    nitrite: 'nitrito',
    guide: 'guía',
    stocked: 'llegan',
    firstStocked: 'llegan los primeros',
    compared: 'amonio en el estanque, mg N/L',
    highest: 'máximo',
    day48: 'el día 48',
    oneStep: 'un paso, 10 L',
    threeSteps: 'tres pasos, 10 L',
    twenty: 'un paso, 20 L',
  },
} as const;
