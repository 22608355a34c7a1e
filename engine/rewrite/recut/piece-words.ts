/** English words by which a step that shapes, fills, heats, cuts or serves is told. */
/** A step that makes pieces of a dough, batter or mince, and what they are called. */
export const SHAPES =
  /\b(?:divide|separate|portion|scoop|shape|form|roll|drop|pipe|spoon|fill|ladle|pour|cut|stamp)\b[^.]{0,80}?(?<!\bprepare (?:the )?)\b(?<pieces>balls|rounds|rolls|buns|cookies|patties|burgers|meatballs|muffin cups|muffin tins?|cupcake (?:liners|cases)|(?<!\bwith (?:\w+ )?)(?:paper )?(?:cases|liners)|(?<=\b(?:among|between) (?:the )?(?:prepared |lined |greased )?)(?:muffin )?cups|wells|ramekins|scones|biscuits|dumplings|bagels|dough balls|circles|chunks of dough|(?<=ball[- ]sized )(?:chunks|pieces))\b|\bcut out\b|\bstamp\b|\bscoops?\b[^.]{0,80}\b(?:dough|batter)\b/i;
/** 'fill a tin with liners': nothing is in it yet. */
export const LINES_TIN = /\b(?:fill|line)\b[^.]*\bwith (?:\w+ )*(?:liners|cases|cups)\b/gi;
/** Pieces that are filled, not shaped. */
export const FILLED = /^(?:muffin|cupcake|cups|paper|cases|liners|wells|ramekins)/i;
export const HEATS = /\b(?:bake|oven|fry|grill|boil|steam|poach|skillet|griddle)\b/i;
export const SERVES =
  /(?<=(?:^|[.!?] )to )serve\b|(?<!\b(?:ready to|before|until|to|if(?: you(?:['’]re| are))?) )\b(?:serve[sd]?|serving|enjoy|platter|dish up)\b/i;
export const CUTS = /\b(?:cut|slice|divide|portion)\b(?! side)/i;
