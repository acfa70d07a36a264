/** Measures that weigh differently in every kitchen, standing as a word of their own. */
export const spoons =
  /(?:^|[\s\d])(?:cups?|tbsp\.?|tbs\.?|tablespoons?|tsp\.?|teaspoons?|pinch(?:es)?|dash(?:es)?|handfuls?|sachets?|packets?|sticks?)(?![\p{L}])/iu
