"""English: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "aches aground angel archers arent attacked backyard bards baring bedside belive bering blige boarder boars "
    "bother breath breaths bride canes carne carriers chanted chuckled clapping cleaning clutter combing "
    "constricted copped corning coroner cowering cunts cuter darting davis defection discount discounted disperse "
    "displaying driving droughts eternal ether excerpt expandable fares farthest feather fiend fiends finishers "
    "finnish flavors flavour flavours fried garbage gassed generals grafting granting hasnt hines hosts inserted "
    "invented invested later learned learning liens loner loosing maine maria marian mariana marie marnie martina "
    "martine members motoring noting pained panes panning pared partied petty phonograph photons piloting planted "
    "pleated projected protecting protection protects protested racking rafting ranting reacting recon regained "
    "regaining releases remained remaining retailing retraining revere revered reverted rotated sanding sands "
    "saying scared scraped shelling shingle shitting siding sifting simmer singing sings skimming slashed slated "
    "slats sliders slimming slinging smelling soars solaris spelling spilt spooner stacking stake stans starling "
    "starring stars startling starving stating stats stearns steele sting stinging stinking stipe stocking "
    "storied storing stormed stranding strat straying swelling tailing talking tanking tasking thorough though "
    "throughput tiber ticker tiled tiling timbre timer titled tolling toppling training trawling tripped trough "
    "truest tuning turing wasnt weighting wielded wight wildest"
)
