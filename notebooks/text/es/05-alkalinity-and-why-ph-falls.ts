export const words = {
  file: 'agua blanda',
  title: '05 · La alcalinidad y por qué baja el pH',
  question: 'El pH de un estanque baja, aunque nadie ha cambiado nada. ¿Qué día se habría podido saber?',
  intro: `<p>Convertir amonio en nitrato produce ácido. La alcalinidad lo absorbe, y mientras hay bastante el pH apenas se mueve. El sistema
    inventado usa un agua de red muy blanda, recibe 100 g de alimento al día y tiene plantado 1 m² de su cama. Nadie dosifica y nadie
    saca lo que sedimenta.</p>`,
  ask: '¿Qué curso seguirá el pH durante 90 días?',
  choices: [
    'Una línea recta hacia abajo',
    'Baja cada vez más deprisa hasta gastar la alcalinidad, luego más despacio; y semanas después vuelve a subir',
    'Baja y se queda abajo hasta que alguien dosifique',
    'Sube todo el tiempo, porque el estanque está aireado',
    'No se mueve: el agua tiene su propio pH',
  ],
  replies: [
    'La alcalinidad baja en línea recta; el pH responde despacio mientras queda mucha y deprisa cuando queda poca.',
    'El pH responde despacio mientras queda mucha alcalinidad y deprisa cuando queda poca; lo que sedimenta devuelve base.',
    'El lodo que respira nitrato devuelve base sin que nadie dosifique.',
    'El aire expulsa dióxido de carbono y sube el pH el primer día; el ácido de la nitrificación sigue llegando.',
    'El pH es lo que dejan el ácido y la base, y con el alimento llega ácido cada día.',
  ],
  shown: `<p>La alcalinidad baja desde el primer día. La mitad de sus {start} meq/L se ha ido el <strong>día {half}</strong>: ese era el
    aviso. El amonio pasa de {guide} mg N/L, la guía, el <strong>día {late}</strong>, {warned} días después. El pH pierde {slow} en los cinco días
    que siguen al primero y {fast} en los cinco que siguen al séptimo, cuando queda poca. Donde se gasta la alcalinidad, a las bacterias
    les falta carbono inorgánico, pues casi todo está en ella, y el ácido las frena: el amonio sube a {tan} mg N/L el día {tan-day}.</p>
    <p>La imagen de abajo dice quién da la base. Lo que sedimenta respira nitrato donde no tiene oxígeno, y cada nitrógeno que sale así
    devuelve la mitad de la base que costó hacer nitrato. El lodo crece; el nitrato está en lo más alto el día {nitrate-day}, y el pH
    en lo más bajo el <strong>día {ph-day}</strong>, con {ph-low}. Desde entonces el nitrato baja y el pH sube, hasta {ph-end} el día
    90.</p>`,
  sliders: {
    feed: { label: 'Alimento', unit: 'g/d' },
    base: { label: 'Bicarbonato de potasio', unit: 'g/semana' },
    alkalinity: { label: 'Alcalinidad del agua de red', unit: 'mg/L como CaCO₃' },
    air: { label: 'Dióxido de carbono en el aire del invernadero', unit: 'ppm' },
  },
  changed: `<p>pH mínimo {lowest} el día {lowest-day}. Al final: alcalinidad {alkalinity} meq/L, pH {end}, amonio {tan} mg N/L.</p>`,
  wrong: [
    'Dosificar para llegar a un pH: el mismo pH puede esconder alcalinidades muy distintas. Cuánto dióxido de carbono queda en el agua depende de los difusores y del aire del invernadero: ciérrelo por la noche, y el pH es menor con la misma alcalinidad. Mida los dos.',
    'Subir el pH deprisa cuando hay mucho amonio convierte el inofensivo en amoníaco venenoso.',
    'Seguir dosificando cuando el nitrato baja: también el lodo da base, el pH pasa de 8, y ahí una parte mayor del amonio es venenosa.',
    'Vaciar los sólidos sedimentados, que es bueno para muchas cosas, y olvidar que su base se va con ellos.',
    'Este modelo no tiene fosfato ni ácidos orgánicos. La cal se disuelve y precipita en él, aunque no se sabe bien con qué rapidez: véase el caso <code>limestone</code>.',
  ],
  caution:
    'La cal, el hidróxido de potasio y otras bases fuertes queman la piel y los ojos: guantes, gafas, dosis pequeñas en el sumidero, nunca en un estanque con peces.',
  exercise:
    'Por cada nitrógeno que se convierte en nitrato se forman dos cargas de ácido. ¿Cuántos gramos de alcalinidad como CaCO₃ gasta 1 g de nitrógeno?',
  answer: `<p>1 g de N es 1/{molar} mol; dos equivalentes de 50 g cada uno hacen {grams} g. 100 g de este alimento tienen {feed-nitrogen} g de
    nitrógeno; no todo se nitrifica. El nitrato que se convierte en gas devuelve la mitad, {back} g; los cultivos que toman nitrato
    devuelven solo un octavo de equivalente por mol.</p>`,
  readings: [
    'alimento, g/d',
    'base, g/semana',
    'red, mg/L como CaCO₃',
    'pH mínimo, día',
    'alcalinidad al final, meq/L',
  ],
  labels: {
    alkalinityChart: 'Alcalinidad en el sumidero',
    alkalinityUnit: 'alcalinidad, meq/L',
    alkalinity: 'alcalinidad',
    pHChart: 'pH en el sumidero',
    nitrateChart: 'Nitrato en el sumidero',
    nitrateUnit: 'nitrato, mg N/L',
    nitrate: 'nitrato',
    lowForFish: 'bajo para los peces',
    half: 'gastada la mitad: el aviso',
    late: 'amonio sobre la guía',
    never: '(nunca)',
    lowest: 'mínimo',
    highest: 'máximo',
  },
} as const;
