import { sourceCells } from '../../packages/core/src/library/origins.generated.js';

/** Publications that a check cites and no number of the library comes from. None has a DOI unless it was seen. */
const others: Readonly<Record<string, string>> = {
  'villaverde-1997':
    'Villaverde, Garcia-Encina & Fdz-Polanco 1997 (authors and year from memory), influence of pH over nitrifying biofilm activity in submerged biofilters, Water Res., abstract',
  'yue-2023':
    'Yue et al. 2023, reactive and microbial inhibitory mechanisms of pH stress on biological nitrification, Water Res. 119660, abstract',
  'siegrist-1999':
    'Siegrist, Brunner, Koch, Linh Con Phan & Van Chieu Le 1999, reduction of biomass decay rate under anoxic and anaerobic conditions, Water Sci. Technol. 39(1):129-137, abstract',
  'tilapia-heat':
    'Effect of temperature on the energy utilization efficiencies of digested protein, fat and carbohydrates in Nile tilapia, 24 and 32 degC, 38 g, abstract, without authors',
  'tilapia-plant-diets-2016':
    'Apparent digestibility of chickpea, maize and bean diets in juvenile and adult Nile tilapia, R. Bras. Zootec. 2016, abstract, without authors',
  'heuvelink-1995':
    'Heuvelink 1995, effect of plant density on biomass allocation to the fruits in tomato, Sci. Hort. 64:193-201, abstract',
  'heuvelink-1997':
    'Heuvelink 1997 (author and year from memory), effect of fruit load on dry matter partitioning in tomato, Sci. Hort., abstract',
  'conversa-2004':
    'Conversa, Santamaria & Gonnella, butterhead lettuce in nutrient film; with Licamele 2009 for lettuce in a fish system, 2004',
  'farm-nitrogen-budget':
    'Nitrogen budget of a recirculating farm: 37 +- 4 % of that fed in fish, 41 +- 2 % out with backwash; abstract, without authors or species',
  'red-tilapia-ammonia':
    'Estimation of ammonia excretion rates during a period of red tilapia culture in a recirculating system, Iranian Journal of Fisheries Sciences, abstract, without authors',
  'pantanella-2012':
    'Pantanella et al. 2012, lettuce over fish at two stockings, Acta Hort. 927:887, second-hand and abstract',
  'sludge-40-days': 'Mineralisation of fish sludge with and without air over 40 d, abstract',
  'ferrarezi-bailey-2019':
    'Ferrarezi & Bailey 2019, Basil performance evaluation in aquaponics (trials of 2015 in the Virgin Islands), HortTechnology 29, and Bailey et al. 2016, ASHS, abstracts; year approximate',
  'trout-diets-1995':
    "Lanari, D'Agaro & Ballestrazzi 1995 (authors from memory), dietary N and P levels, effluent water and performance in rainbow trout, Water Sci. Technol. 31(10):157, abstract",
  'azevedo-1998':
    'Azevedo 1998, effects of feeding level, water temperature and diet on two salmonids, thesis, University of Guelph, abstract',
  'suhl-2016': 'Suhl et al. 2016, tomato on a fish loop, Agric. Water Manag. 178:335, second-hand',
  'tomato-mexico':
    'Tomato in a low-tech plastic house in Mexico, 24 April to 16 October: 19.1 kg/m2, abstract',
  'klas-2006':
    'Klas, Mozes & Lahav 2006 (authors from memory), single-sludge denitrification in a farm of sea bream, abstract',
  'hegde-1997': 'Hegde 1997, nutrient requirements of solanaceous vegetable crops, abstract; field crops',
  'season-yields': 'Usual yields of a season under cover, from memory of handbooks',
  'cucumber-seasons': 'Cucumber in two seasons at two thirds of the light, abstract',
  'zou-2017': 'Zou et al. 2017, J. Agric. Food Chem., plant yield 3.0-4.9 kg/m2',
  'wang-2023': 'Wang et al. 2023, fish and plants at pH 6.0, 6.5 and 7.0, abstract',
  'trussell-1972':
    'Trussell, The percent un-ionized ammonia in aqueous ammonia solutions at different pH levels and temperatures, J. Fish. Res. Board Can. 29, 1972, reprinted in a test-kit manual',
  'aqion-ammonia': 'aqion, worked example "Free ammonia in water" (a speciation program)',
  'aqion-open-system': 'aqion, "Carbonate species vs pH (open system)" (a speciation program)',
  'canada-ammonia': 'Canadian Council of Ministers of the Environment, water quality guideline for ammonia',
  'jcu-lecture': 'James Cook University, CH3041 lecture 5, pH of a raindrop',
  'stumm-morgan': 'Stumm & Morgan, Aquatic Chemistry, table of carbonate constants',
  'apha-4500': 'APHA, Standard Methods 4500-O, table of oxygen solubility; USGS tables of dissolved oxygen',
  'meter-altitude': 'Manual of an oxygen meter, table of oxygen saturation by height above the sea',
  'tucker-1984':
    'Tucker 1984, factors of free carbon dioxide from pH, alkalinity and temperature, as reprinted',
  'phreeqc-3':
    'Parkhurst & Appelo 2013, PHREEQC version 3, USGS Techniques and Methods 6-A43: printed output of its examples and tests',
  'langelier-index': 'Standard Methods 2330, Langelier index, worked example, from memory',
  'pool-index': 'Manuals of pools and of a meter, tables of the saturation index pH + TF + CF + AF - 12.1',
  'hu-2011':
    'Hu, Ni et al. 2011, removal of carbon dioxide in a packed column, Procedia Eng. 15:4780, abstract',
  'en-25814': 'EN 25814 (ISO 5814), saturation table, as reprinted in a meter manual',
  'recirculating-lecture': 'Lecture sheet "Flow-through and recirculating systems", amounts per kg of feed',
  'cripps-bergheim-2000': 'Cripps & Bergheim 2000, solids of recirculating systems, as cited',
  'kristiansen-cripps-1996': 'Kristiansen & Cripps 1996, as cited',
  'crab-2007': 'Crab et al. 2007, as cited in Zou et al. 2016 Bioresour. Technol. 210:81',
  'medale-1995': 'Medale et al. 1995, Water Sci. Technol. 31(10):185, abstract',
  'dalsgaard-pedersen-2011':
    'Dalsgaard & Pedersen 2011, nitrogen of trout in recirculating systems, as cited',
  'thermal-growth-example':
    'Worked example of the thermal growth coefficient of Iwama & Tautz 1981 (10 to 350 g)',
  'glencross-bermudes':
    'Glencross & Bermudes, effect of high water temperatures on the utilisation efficiencies of energy and protein by juvenile barramundi, abstract',
  'trout-rations-1996':
    'Maintenance and best rations of rainbow trout of four sizes, Fish. Sci. 62:737, 1996, abstract',
  'farhat-khan-2011':
    'Farhat & Khan 2011, growth and retention of African catfish fingerlings on seven levels of protein, abstract',
  'nozzi-2018': 'Nozzi et al. 2018, three systems of tilapia and plants, Agronomy 8:27, as cited',
  'loop-rate-2024':
    'Tilapia and lettuce at hydraulic rates of 1.2-3.0 m/d, Scientific Reports 2024, abstract',
  'carp-energy-1979': 'Energy and protein of carp feeds, Bull. Jap. Soc. Sci. Fish. 45:983, abstract',
  'oxygen-of-fed-fish': 'Oxygen per kg of feed of tilapia and trout, from memory of various trials',
  'goolish-adelman-1984':
    'Goolish & Adelman 1984, ration size and temperature and the growth of juvenile common carp, Aquaculture 36:27-35, abstract',
  'wurtsbaugh-davis-1977':
    'Wurtsbaugh & Davis 1977, temperature and ration level and the growth of rainbow trout, J. Fish Biol. 11:87-98, abstract',
  'gatlin-1986':
    'Gatlin, Poe & Wilson 1986, protein and energy of fingerling channel catfish for maintenance and maximum growth, J. Nutr., abstract; year from memory',
  'catfish-cages':
    'Channel catfish of 84 g in cages fed to satiety for 12 weeks on 27-42 % protein, abstract',
  'page-andrews-1973':
    'Page & Andrews 1973, protein and energy and channel catfish of 14 and 114 g, abstract',
  'perch-meals-2001':
    'Feed supply rate within a meal and the growth of juvenile perch at 18 degC, Aquac. Res. 2001, abstract',
  'abery-de-silva-2005':
    'Abery & De Silva 2005, Murray cod under five feeding schedules, Aquac. Res., abstract',
  'de-silva-2000': 'De Silva and others 2000, dietary protein of juvenile Murray cod, Aquac. Res., abstract',
  'silver-perch-cages':
    'Silver perch of 109-115 g in cages at 12-200 a m3 for 210 days, abstract; the densities without fighting',
  'conceicao-1998':
    'Conceicao and others 1998, cost of growth in larval and juvenile African catfish, Aquaculture 161:95-106, abstract',
  'kinyage-2019':
    'Kinyage, Pedersen & Pedersen 2019, effects of abrupt salinity increase on nitrification in a freshwater moving bed biofilter, Aquac. Eng., abstract',
  'van-weerd-1995': 'van Weerd et al. 1995, nitrogen of fed and fasting trout, abstract',
  'feed-conversions':
    'Usual feed conversions by species, UVI unit for tilapia, else from memory of various trials',
  'epa-nitrogen-1975': 'US EPA, Process design manual for nitrogen control, 1975 and 1993',
  'ebeling-2006': 'Ebeling, Timmons & Bisogni 2006, Aquaculture 257:346-358, from memory',
  'denitrification-standard': 'Standard stoichiometry of denitrification, as in wastewater textbooks',
  'eding-2006': 'Eding et al. 2006, trickling filters, Aquac. Eng. 34:234, from memory',
  'malone-beecher-2000': 'Malone & Beecher 2000, floating bead filters, from memory',
  'malone-pfeiffer-2006': 'Malone & Pfeiffer 2006, rating fixed-film nitrifying filters, abstract',
  'ebeling-wheaton-2006':
    'Ebeling & Wheaton 2006, bead filter kinetics, Int. J. Recirc. Aquac. 7:13-41, abstract',
  'zhu-chen-2001': 'Zhu & Chen 2001, organic carbon and nitrifying films, Aquac. Eng. 25:1, abstract',
  'biofilm-kinetics-1982':
    'Kinetics of biofilm nitrification, Biotechnol. Bioeng. 24:669-689, 1982, abstract',
  'zhu-chen-2002': 'Zhu & Chen 2002, temperature and nitrifying biofilms, from memory',
  'nitrifier-doubling': 'Doubling times of nitrifiers in the literature, from memory',
  'tei-2003': 'Tei, Benincasa & Guiducci 2003, critical nitrogen of lettuce, from memory',
  'graber-junge': 'Graber & Junge, nitrogen uptake of tomato on fish water',
  'van-rijn-2006': 'van Rijn et al. 2006, denitrification in recirculating systems, from memory',
  'start-up-classic':
    'Timmons & Ebeling; Masser et al., SRAC 452: the classic course of a start-up, from memory',
  'hager-2021': 'Hager et al. 2021, manual of Kentucky State University',
  'oregon-table-30':
    'Oregon DEQ, ammonia criteria, tables 30(a)-(c), which follow EPA-822-R-13-001; as quoted in the tests of the R package ORDEQWaterQualityCriteria (J. Law)',
};

/** What a key stands for: a source of the library, or of this list. Throws RangeError where it is neither. */
export function citationOf(key: string): string {
  const cells = sourceCells.find(([each]) => each === key);
  if (cells !== undefined) {
    const [, citation, year, doi] = cells;
    return [citation, year, doi].filter((part) => part !== 'none').join(', ');
  }
  if (!(key in others)) throw new RangeError(`no source ${key} in the library or in citations.ts`);
  return others[key];
}
