export const words = {
  file: 'una granja',
  title: '16 · Diseñar una granja',
  question: 'Usted tiene 40 litros de agua al día. ¿Para qué tamaño de granja alcanza?',
  intro: `<p>En un lugar seco el agua va primero, y de ella sale lo demás: el agua da la superficie de las camas, las camas el alimento, el
    alimento los peces y el biofiltro. La granja inventada tiene camas flotantes de lechuga bajo cubierta, un estanque, un biofiltro y un
    sumidero; al aire libre se evaporarían 5 mm al día, bajo la cubierta el 70 % de eso.</p>`,
  ask: '¿Cuántos metros cuadrados de lechuga mantienen 40 L al día, con el estanque y el sumidero incluidos?',
  guess: { label: 'Mi predicción', unit: 'm²' },
  shown: `<p><strong>Del agua a las camas.</strong> Con 2 m² la granja pierde {few} L al día, con 8 m² {many}: {each} L por cada metro cuadrado, con el
    estanque que crece a la par, y un resto que se pierde crezca lo que crezca. Así que {water} L alcanzan para {beds} m².</p>
    <p><strong>De las camas al alimento.</strong> Los manuales dan {rule} g de alimento por metro cuadrado y día para cultivos de hoja, en sistemas
    que sacan los sólidos. Aquí se quedan, y la mitad, {half} g, es un comienzo prudente (elegido, no medido). <strong>Del alimento a
    los peces.</strong> Un pez de 150 g come unos {per-fish} g al día. <strong>Del alimento al biofiltro.</strong> Con la cuenta del manual, la de
    la lección 09.</p>`,
  sliders: {
    water: { label: 'Agua que hay', unit: 'L/d' },
    perArea: { label: 'Alimento por m² de cama', unit: 'g/d' },
    et0: { label: 'Evaporación al aire libre (ET₀)', unit: 'mm/d' },
  },
  changed: `<p>Cuatro cuentas hacen una granja; la simulación dice si vive. Si dice que falta agua, tome menos metros cuadrados. Amonio máximo
    {tan} mg N/L, nitrato al final {nitrate} mg N/L, pérdida máxima {loss} L al día.</p>`,
  plan: `<h2>Deje que la planifique la biblioteca</h2><p>La búsqueda prueba a la vez camas y peces (estanque y biofiltro en proporción) y se queda con lo
    que da la mayor cosecha sin que nada dañe a los peces, al agua ni al cultivo. Tarda un minuto; usa el agua del control de arriba, con 5 mm
    al día.</p>`,
  progress: '{runs} simulaciones',
  planned: `<p>Después de {runs} simulaciones: {harvest} kg de lechuga en 60 días con {water} L al día. El plan puede ser mayor que su cuenta: el
    sumidero presta agua un tiempo, y 60 días son pocos. Un año seco pide la cuenta, no el préstamo.</p>`,
  noPlan:
    '<p>Después de {runs} simulaciones no se encontró nada que no dañe nada: hay demasiada poca agua para la granja más pequeña que se probó.</p>',
  wrong: [
    'Diseñar para el día medio. Decide la semana más seca: mueva ET₀.',
    'Llenar las camas hasta el último metro cuadrado. Una bomba que aspira aire se lo lleva todo (lección 07).',
    'Comprar primero los peces. Crecen, y el alimento con ellos; el biofiltro se compra para el día antes de la cosecha.',
    'Olvidar el corte de luz (lección 14): más peces por metro cúbico tienen menos horas.',
  ],
  caution:
    'Esto es una cuenta con promedios publicados, no un proyecto del que alguien responda. La densidad de peces, las especies no nativas, la obra, la electricidad y los vertidos siguen su legislación y a profesionales autorizados.',
  exercise:
    'En el mes más seco se evaporan 7,5 mm al día. ¿Para cuántos metros cuadrados alcanzan entonces los mismos 40 L?',
  answer: `<p>{dry} m² en lugar de {beds}. Quien construya para {beds} m² y tenga {water} L debe dejar camas en barbecho ese mes (lección 15), o
    guardar agua antes.</p>`,
  readings: ['agua, L/d', 'alimento, g/(m² d)', 'camas, m²', 'peces', 'biofiltro, L', 'veredicto'],
  labels: {
    sums: 'La granja en números',
    what: 'qué',
    howMuch: 'cuánto',
    unit: 'unidad',
    water: 'agua',
    beds: 'camas',
    feed: 'alimento',
    fish: 'peces de 150 g',
    number: 'número',
    filter: 'soportes en el biofiltro',
    planIt: 'Planificar',
    plannedFile: 'una granja planificada',
    poisonChart: 'Amonio y nitrito en el estanque',
    ammonia: 'amonio',
    nitrite: 'nitrito',
    nitrateChart: 'Nitrato en el sumidero',
    nitrateUnit: 'nitrato, mg N/L',
    nitrate: 'nitrato',
  },
} as const;
