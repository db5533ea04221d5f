export const words = {
  file: 'un biofiltro nuevo',
  title: '04 · Arrancar un biofiltro',
  question:
    'Un biofiltro nuevo está limpio. ¿Qué veneno llega primero a su pico, a qué altura, y cuándo se acaba?',
  intro: `<p>Tienen que crecer dos clases de bacterias: una convierte el amonio en nitrito, la otra el nitrito en nitrato. La segunda vive
    de lo que hace la primera. El sistema inventado aún no tiene plantas y recibe 30 g de alimento al día.</p>`,
  ask: '¿Qué mostrará el kit de análisis durante 90 días?',
  choices: [
    'El amonio y el nitrito llegan juntos a su pico',
    'Primero el pico del amonio, después el del nitrito',
    'Primero el pico del nitrito, después el del amonio',
    'El amonio sube y se queda arriba',
  ],
  replies: [
    'La segunda clase de bacterias solo encuentra comida cuando la primera la ha hecho, así que el segundo pico se retrasa.',
    'La segunda clase de bacterias solo encuentra comida cuando la primera la ha hecho.',
    'No hay nitrito antes de que haya bacterias que lo hagan a partir del amonio.',
    'Las bacterias crecen mientras encuentran comida: al final se comen todo lo que llega.',
  ],
  shown: `<p>El amonio llega a su pico el día {tan-day}, con {tan-high}, el nitrito el día {nitrite-day}, con {nitrite-high} mg N/L.</p>`,
  sliders: {
    temperature: { label: 'Agua', unit: '°C' },
    seeded: { label: 'Biopelícula ya crecida que se trae', unit: '% de un biofiltro lleno' },
    feed: { label: 'Alimento', unit: 'g/d' },
  },
  changed: `<p>Amonio máximo {tan} el día {tan-day}; nitrito máximo {nitrite} mg N/L el día {nitrite-day}.</p>`,
  wrong: [
    '«Ya no hay amonio, luego el biofiltro está listo»: falta el segundo pico.',
    'El agua fría, la falta de alcalinidad, el cloro o un filtro fregado devuelven el crecimiento al principio.',
    'No se sabe cuántas bacterias tiene un biofiltro nuevo el día 0; las tablas dicen una cienmilésima de una película completa, y puede ser cien veces más o menos (<code>biofilm.seed-aob</code>). Los días son una guía, no una fecha.',
  ],
  caution:
    'Los dos picos dañan a los peces. Haga crecer el biofiltro sin peces, con una sal de amonio, y meta peces cuando una dosis desaparezca en un día (el caso <code>fishless</code>). Sobre los peces deciden la ley y profesionales autorizados.',
  exercise: '¿Cuánto ayuda traer el 5 % de un biofiltro lleno desde un sistema sano?',
  answer: `<p>A 24 °C y 30 g/d el pico del nitrito es entonces de {seeded} mg N/L en lugar de {unseeded}. También puede traer
    enfermedades.</p>`,
  readings: [
    'agua, °C',
    'biopelícula traída, %',
    'alimento, g/d',
    'amonio: día, mg N/L',
    'nitrito: día, mg N/L',
  ],
  labels: {
    chart: 'Amonio y nitrito mientras crece un biofiltro',
    chartNow: 'Amonio y nitrito con lo que usted eligió',
    ammonia: 'amonio',
    nitrite: 'nitrito',
    guide: 'guía para ambos',
  },
} as const;
