"""English: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "aches aground angel archers arent attacked backyard bards baring bedside bering blige boarder boars bother "
    "breath breaths bride canes carne carriers chanted cleaning clutter combing constricted copped corning "
    "coroner cuter darting davis defection discount discounted disperse displaying driving droughts eternal ether "
    "excerpt expandable fares farthest favor feather fiend fiends finishers flavour fried garbage gassed generals "
    "grafting granting hasnt hines hosts inserted invented invested learned learning liens loner loosing maine "
    "maria marian mariana marie marnie martina martine members motoring noting pained panes panning petty "
    "phonograph photons piloting planted pleated projected protecting protection protects protested racking "
    "rafting ranting reacting recon regained regaining releases remained remaining retailing retraining revere "
    "revered reverted rotated sanding sands saying scared scraped shelling shingle siding simmer singing sings "
    "skimming slashed slated slats sliders slimming slinging smelling soars solaris spelling spilt stacking stake "
    "stans staring starling starring stars startling starving stating stats stearns steele stinging stinking "
    "stipe stocking storied stormed stranding strapped strat straying swelling tailing talking tanking tasking "
    "thorough though three throughput tiber ticker tiled tiling timbre timer titled tolling toppling training "
    "trawling tripped trough tuning turing wasnt weighted weighting wielded wight wildest"
)
