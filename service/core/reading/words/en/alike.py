"""English: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "aches aground angel archers arent attacked backyard bedside boarder bother breath carne carriers cleaning "
    "clutter combing constricted copped cuter darting davis defection discount discounted disperse displaying "
    "driving ether excerpt expandable farthest favor feather fiend fiends finer finishers flavour fried garbage "
    "generals hasnt hines inserted invented invested learned learning liens loner loosing maria marian mariana "
    "martina members metre motoring noting panes panning phonograph photons protecting protects racking reacting "
    "recon regained regaining releases remained remaining retailing retraining revere revered reverted rotated "
    "sanding sands saying scared scraped shelling shingle siding singing sings skimming slashed slated slats "
    "sliders slimming slinging smelling spelling spilt stacking stake stans staring starling starring stars "
    "startling starving stating stats stearns stinging stinking stipe stocking storied stormed stranding strapped "
    "strat straying swelling tailing talking tanking tasking thorough though three tiber tiled tiling timbre "
    "timer titled toppling training trawling tripped trough wasnt weighting wielded wight"
)
