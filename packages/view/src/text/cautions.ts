/** What a model cannot answer for. Printed with every summary and kept in every document. */
export const cautions: readonly string[] = [
  'A model of well-mixed vessels with published averages: measure your own water before you act on it.',
  'Fish welfare, food safety and discharge: local codes and licensed practice decide, not this run.',
  'Electricity near water, caustic dosing (it burns): licensed practice, protective gear, small doses.',
];
