export const words = {
  file: 'camas',
  title: '06 · Camas sin plantar',
  question:
    'Las plántulas se retrasan y las camas quedan vacías. ¿Qué avisa primero: el nitrato, el amonio o la alcalinidad?',
  intro: `<p>El sistema inventado tiene 4 m² de cama flotante con agua blanda y recibe 80 g de alimento al día; las camas están plantadas o
    vacías los 90 días enteros. Nadie saca lo que sedimenta.</p>`,
  ask: 'Todas las camas están vacías 90 días y ningún cultivo toma nitrato. ¿Cómo evoluciona?',
  choices: [
    'Sube lo mismo cada semana, hasta el final',
    'Sube, se da la vuelta y vuelve a bajar',
    'Apenas se mueve: el biofiltro lo mantiene bajo',
  ],
  replies: [
    'Cuanto más sedimenta, más parte queda sin oxígeno, y ahí las bacterias respiran nitrato.',
    'Cuanto más sedimenta, más parte queda sin oxígeno, y ahí las bacterias respiran nitrato.',
    'Un biofiltro hace nitrato: no quita ninguno.',
  ],
  shown: `<p>El nitrato está en lo más alto el día {nitrate-day}, con {nitrate-high} mg/L, y termina en {end}: para entonces las bacterias de
    los sólidos sedimentados respiran más del que hace el biofiltro. Por eso un nitrato que no se mueve no dice nada del cultivo.</p>
    <p>Con un kit de pasos de 5 mg/L el nitrato distingue lo vacío de lo plantado desde el día {nitrate-told}; con un kit de alcalinidad de
    gotas de 0,36 meq/L, desde el día {alkalinity-told}. Al final, frente a las camas plantadas, el amonio difiere un {tan-change} %, el
    nitrato un {nitrate-change} %, la alcalinidad un {alkalinity-change} %. El cultivo mismo apenas devuelve base: bebe, y el agua de red que
    repone lo bebido trae base.</p>`,
  sliders: {
    planted: { label: 'Plantado', unit: 'm²' },
    feed: { label: 'Alimento', unit: 'g/d' },
    base: { label: 'Bicarbonato de potasio', unit: 'g/semana' },
  },
  changed: `<p>Después de 90 días: nitrato {nitrate} mg/L, alcalinidad {alkalinity} meq/L, pH {pH}, amonio {tan} mg N/L.</p>`,
  wrong: [
    'Leer solo el nitrato. Cuando se acaba la alcalinidad, el amonio ya no se convierte en nitrato, y el nitrato parece mejor de lo que es. Y donde el lodo es grueso, el nitrato es bajo se dé el alimento que se dé.',
    'Tomar ese lodo por un filtro: nadie sabe cuánto dura, y lo que hace con el oxígeno está solo en parte en el modelo.',
    'Plantarlo todo el mismo día: las plantas jóvenes toman poco, y las viejas todo a la vez.',
  ],
  caution: 'Recortar el alimento afecta al bienestar de los peces: hágalo por pasos y obsérvelos.',
  exercise:
    'Las camas están vacías, así que reduce el alimento a la mitad, a 40 g/d, para ahorrar nitrato y alcalinidad. ¿Lo consigue?',
  answer: `<p>Compare las líneas. Con menos alimento el lodo es más delgado, el oxígeno llega a más parte de él y menos nitrato se convierte
    en gas, que devolvería base. Para tener la alcalinidad del sistema plantado, mantenga el alimento y dosifique: la tercera línea
    lleva 20 g por semana.</p>`,
  readings: ['plantado, m²', 'alimento, g/d', 'base, g/semana', 'nitrato, mg N/L', 'alcalinidad, meq/L'],
  labels: {
    planted: 'plantadas',
    bare: 'vacías',
    yours: 'sus camas',
    never: '(nunca)',
    nitrateUnit: 'nitrato, mg N/L',
    alkalinityUnit: 'alcalinidad, meq/L',
    ends: 'Después de 90 días',
    bare80: 'vacías, 80 g/d',
    bare40: 'vacías, 40 g/d',
    bareDosed: 'vacías, 80 g/d, con base',
    planted80: 'plantadas, 80 g/d',
  },
} as const;
