export const words = {
  file: 'sequía',
  title: '07 · Sequía',
  question:
    'El ayuntamiento raciona el agua. ¿Qué pasa en un sistema que pierde más de lo que puede reponer?',
  intro: `<p>Lo que se evapora deja atrás su sal. El nivel baja en un solo sitio: el sumidero. El sumidero inventado, de 500 L,
    tiene 400 L a la altura de la boya; su bomba aspira aire cuando quedan 100 L. El sistema pierde unos 20 L al día; desde el primer día la reposición se limita a 15 L al
    día.</p>`,
  ask: '¿Qué llega primero?',
  choices: [
    'La sal alcanza lo que la lechuga no soporta',
    'El nitrato sube hasta ser un peligro para los peces',
    'La bomba aspira aire y no llega agua al biofiltro',
    'Nada de esto en 90 días',
  ],
  replies: [
    'La sal sube solo al ritmo al que mengua el agua, y los rebosaderos retienen la mayor parte.',
    'El nitrato daña a la tilapia solo muy por encima de lo que alcanza un sistema pequeño.',
    'Solo cede el sumidero, y es pequeño.',
    'Cada día faltan unos litros, y el sumidero es pequeño.',
  ],
  shown: `<p>La bomba aspira aire el día {trip}. Cada pocos días se ha juntado agua bastante para arrancarla, y enseguida vuelve a aspirar
    aire. Así el estanque no tiene biofiltro, y el amonio sube a {tan} mg N/L. El cloruro no pasa de {chloride} mg/L; la lechuga soporta
    {limit}.</p>`,
  sliders: {
    cap: { label: 'Reposición permitida', unit: 'L/d' },
    sump: { label: 'Agua en el sumidero a la altura de la boya', unit: 'L' },
    et0: { label: 'Evaporación al aire libre (ET₀)', unit: 'mm/d' },
  },
  runs: '<p>La bomba funciona los 90 días.</p>',
  trips: '<p>La bomba aspira aire el día {trip-now}.</p>',
  changed: `<p>Amonio máximo {tan} mg N/L; el cloruro termina en {chloride} mg/L. El último día el sistema pierde {loss} L.</p>`,
  wrong: [
    'Un estanque lleno engaña: los rebosaderos mantienen llenos el estanque y las camas mientras el sumidero se seca.',
    'Reponer con agua salada de pozo: entonces el cloruro sube sin fin.',
    'Un cambio de agua «porque el nitrato está alto» en plena sequía.',
  ],
  caution:
    'Electricidad cerca del agua: electricista autorizado y protección diferencial. Una bomba que trabaja en seco se quema: ponga un interruptor de nivel, y en el estanque un aire que no dependa de esa bomba.',
  exercise:
    '¿Cuánta agua debe tener el sumidero a la altura de la boya para que la bomba aguante 90 días con 15 L al día?',
  answer: `<p>La pérdida llega a {loss} L al día, vuelven {cap}, así que en 90 días faltan {short} L, y deben quedar {inlet} L: {sum} L.
    Pruébelo con los controles, un poco por encima y un poco por debajo.</p>`,
  readings: [
    'reposición, L/d',
    'sumidero, L',
    'ET₀, mm/d',
    'la bomba aspira aire, día',
    'amonio máximo, mg N/L',
  ],
  labels: {
    air: 'la bomba aspira aire',
    water: 'agua',
    inlet: 'toma de la bomba',
    sumpChart: 'Agua en el sumidero',
    sumpUnit: 'sumidero, L',
    ammoniaChart: 'Amonio en el estanque',
    ammoniaUnit: 'amonio, mg N/L',
    ammonia: 'amonio',
    chlorideChart: 'Cloruro en el estanque',
    chlorideUnit: 'cloruro, mg/L',
    chloride: 'cloruro',
  },
} as const;
