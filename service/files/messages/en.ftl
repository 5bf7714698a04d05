# Lengths, angles, weights and shares come with their unit, as the country writes them. Names of fields and things are
# labels: they stand alone, behind a colon or in brackets, so that no language has to bend them.

percent = { $number } %
or = { $first } or { $last }

# --- the letter ---

reply-subject = Self-steering for { $boat }
reply-subject-bare = Your enquiry about self-steering
reply-hello-name = Dear { $name },
reply-hello = Hello,
reply-thanks = { $whose ->
    [owner] Thank you for writing to us about your { $boat }.
   *[other] Thank you for writing to us about the { $boat }.
}
reply-thanks-bare = Thank you for writing to us.
reply-unsure = We are not quite sure yet which hull she is.
reply-regards = With kind regards,
reply-desk = The sales desk

heading-suggest = What we suggest
heading-why = Why
heading-sure = How sure we are
heading-buy = What you provide
heading-ask = Before we ship, please tell us
heading-care = Please take care
heading-nothing = Nothing fits yet

reply-suggest = We suggest gear { $gear } on lower bracket { $lower } and upper bracket { $upper }, with shaft { $shaft }.
reply-verdict = { $verdict ->
    [fits] By the figures we have, it fits.
    [tight] By the figures we have it fits, but only just.
   *[undecided] Whether it fits cannot be decided yet: something it depends on is not known, neither from you nor from other boats.
}
reply-place = { $side ->
    [centre] It stands on the centreline
    [port] It stands { $offset } to port of the centreline
   *[starboard] It stands { $offset } to starboard of the centreline
}, the shaft { $aft } aft of the transom's top edge, the middle of the two brackets' collars { $lower } and { $upper } above the water.
reply-trades = It asks this of the boat:
trade-take-off = take off: { $thing }
trade-build-up = have the skin behind the { $bracket } built up

reply-sisters = { $count ->
    [0] We have no sister ship in our records, so we looked at the boats most like yours.
    [one] We have one sister ship in our records.
   *[other] We have { $count } sister ships in our records.
}
reply-same = { $same ->
    [0] None of the { $looked } boats we looked at most closely carries exactly this.
    [one] Of the { $looked } boats we looked at most closely, one carries exactly this.
   *[other] Of the { $looked } boats we looked at most closely, { $same } carry exactly this.
}
reply-tried = We found it by trying our parts one by one on your measurements.
reply-likest = The boat most like yours is number { $record } in our records. Where yours differs:
reply-alike = The boat most like yours is number { $record } in our records; in what we know of both, they are the same.
reply-differs = { $field }: hers { $theirs }, yours { $ours }
reply-hers-only = { $field }: hers { $theirs }
reply-ours-only = { $field }: yours { $ours }
contrast-fails = With { $theirs } instead of { $ours } ({ $field }), this gear would not go on her.
contrast-moves = With { $theirs } instead of { $ours } ({ $field }), the shaft would stand { $aft } fore and aft (+ is aft), the lower collar { $lower } and the upper { $upper } in height.

reply-chance = We put the chance that everything clears on your boat at { $chance }.
reply-doubt = What doubt there is rests on:
reply-doubt-line = { $field }: { $share } of it
reply-filled = { $source ->
    [sister_ships] Not told, so taken from sister ships: { $fields }.
    [neighbours] Not told, so taken from similar boats: { $fields }.
   *[prior] Not told, so taken as is usual: { $fields }.
}

also = { $first }; { $last }
and-more = { $list } and { $count } more
reply-nothing = By the figures we have, nothing we make fits her as she is. The nearest is gear { $gear } on lower bracket { $lower } and upper bracket { $upper }, with shaft { $shaft }.
reply-miss = What stands in the way: { $check }. It lacks { $amount }.
reply-cures = We tried what would help:
reply-no-cure = Taking off one thing, or changing one part, does not cure it. Tell us what can be moved and we shall look again.
cure-without = without this: { $thing }
cure-shaft = shaft { $code } instead
cure-bracket = { $bracket } { $code } instead
reply-none = What we know of her is not yet enough to suggest anything.

# --- what the owner provides ---

supply-bolts = { $bracket }: { $count } through-bolts { $size } × { $length } with washers and nuts
supply-bolts-open = { $bracket }: { $count } through-bolts { $size } with washers and nuts; their length once the skin has been measured
supply-sealant = sealant for the bolt holes
supply-backing = backing plates cut to the drawing (316 stainless, aluminium or sealed marine plywood)
supply-core = epoxy to fill the core around every hole, or compression sleeves
supply-insulate = insulating washers and sleeves between stainless metal and the hull
supply-tube = a straight tube of the shaft's diameter to plumb with before drilling

# --- cautions ---

caution-confirm = This is advice worked out from what we were told. Confirm every measurement on the boat before metal is ordered or a hole is drilled.
caution-holes = Holes in a hull can sink a boat. Ask the builder or a surveyor whether the skin may be drilled there and how it must be backed; local rules and class come first.
caution-plumb = Set the shaft plumb both ways with a dummy tube before drilling: fit the lower bracket first.
caution-cored = The skin is cored: the core must be taken out and filled around every hole, or sleeved, or it will crush and soak.
caution-metal = Stainless metal against a metal hull corrodes the hull: insulate every bolt, flange and plate.
caution-moves = Something on the stern moves and we do not know where to: try it through its whole movement with a dummy shaft in place.
caution-low-hole = The lowest bolt hole stands { $height } above the water: have a surveyor agree before drilling there.
caution-weak-skin = By usual figures the skin behind a bracket is weaker than the loads ask: a builder or surveyor should say how it is to be built up before anything is drilled.
caution-shaking = At some speeds eddies may set the shaft trembling: watch for it on the first sail, and have the overhang shortened if it does.
caution-tight = The fit is tight: it passes on the figures given, but not surely. Measure again what the doubt rests on.

# --- how far experience backs it ---

backing-nothing = No installation is on record yet: the suggestions rest on geometry and loads alone, and nothing is known of what fitters would choose.
backing-no-like = No boat on record shares enough with this one to be compared: the chances are how often each was installed on any boat.
backing-nearest = { $known ->
    [yes] No { $model } is on record
   *[no] The hull model is not known, so no sister ship speaks
}: what fitters would install is judged by other boats, of which the nearest is { $like } alike.
backing-unlike = { $known ->
    [yes] No { $model } is on record
   *[no] The hull model is not known, so no sister ship speaks
}: what fitters would install is judged by other boats, of which the nearest is { $like } alike and even that is a rather different boat.
backing-stern = { $count ->
    [0] No boat with { $stern } is on record
    [one] Only one boat with { $stern } is on record
   *[other] Only { $count } boats with { $stern } are on record
}: what others carry says little here, the suggestions rest on geometry.
backing-tried = Nothing that boats like this one carry passes here: what is suggested was found by trying the catalogue on the measurements.
stern-plumb = a plumb transom
stern-raked = a raked transom
stern-reverse = a reverse transom
stern-scoop = a scoop
stern-open = an open stern
stern-double_ended = a double-ended stern

# --- questions: what, how it is measured, how exactly ---

ask-hull = Which boat is it exactly: { $names }? The year and the builder's plate would tell.
ask-boat-model = Which boat is it: builder, model and year?
ask-transom-top_height_mm = How high does the transom's top edge stand above the water? On the centreline, in a flat calm and loaded as you cruise: from the water up to the highest skin that could bear a bracket, without rail, cap or coaming. To { $exact } is good enough.
ask-transom-rake_deg = How far does the transom lean from the vertical, and which way? Hold a level or a plumb line on the centreline and tell us whether the top edge is further aft than the bottom (a counter) or further forward (reverse). To { $exact } is good enough.
ask-transom-bottom_height_mm = How high above the water does the transom end below? On the centreline; with a minus sign if it ends under water. To { $exact } is good enough.
ask-transom-width_top_mm = How wide is the transom at the top? The full width along the top edge, to { $exact }.
ask-transom-width_waterline_mm = How wide is the transom at the waterline, or along its lower edge if that is higher? The full width, to { $exact }.
ask-transom-thickness_mm = How thick is the skin where the bolts go through? Measure at a through-hull or a drilled hole: all of it, core included, to { $exact }.
ask-transom-camber_mm = How much is the transom curved? Hold a straight batten level across the top edge so that it touches in the middle, and give us half the sum of the gaps at both ends, to { $exact }.
ask-transom-step_height_mm = How high does the upper face of the step stand above the water? In a flat calm, loaded as you cruise, to { $exact }.
ask-transom-step_depth_mm = How deep is the step? Fore and aft, from the foot of the riser to the after edge, to { $exact }.
ask-transom-step_width_mm = How wide is the step, athwartships, where it is flat? To { $exact }.
ask-transom-post_width_mm = How wide is the sternpost where the brackets would clamp it? Measure with callipers at both heights, to { $exact }.
ask-main_rudder-hung = How is the main rudder hung: under the hull, or outside on the transom or sternpost?
ask-main_rudder-trailing_edge_aft_mm = How far aft does the main rudder reach? Hang a plumb line from the transom's top edge and measure fore and aft to the rudder's aftmost edge; with a minus sign if that lies forward of the line. To { $exact } is good enough.
ask-main_rudder-stock_aft_mm = Where is the rudder stock? Fore and aft from a plumb line hung from the transom's top edge; with a minus sign forward of it. To { $exact } is good enough.
ask-boat-displacement_kg = What does she weigh, loaded as you cruise? To { $exact } is good enough; tell us whether the figure is light or loaded.
ask-boat-stern = What shape is the stern where a lower bracket would sit: plumb, raked, reverse, with a moulded step, open, or double-ended? A photo from the side says it best.
ask-obstacle = Where exactly is this: { $thing }? How far aft of the transom's top edge does it begin and end, how far off the centreline, how high above the water? To { $exact } is good enough.
ask-obstacles = What stands on the stern: ladder, platform, davits, outboard, exhaust, rails, stays, booms, an arch? Tell us of each how far off the centreline it begins and ends, how far aft and how high above the water it reaches (to { $exact } is good enough), whether it folds or swings, and whether it may go. A photo from astern helps.
ask-doubt-contradictory = { $field }: you give { $values }. Which is right?
ask-doubt-sign_unknown = { $field }: you write “{ $text }”. Which way does it go: aft or forward, above the water or below it?
ask-doubt-unit_unknown = { $field }: you write “{ $text }”. In which unit is that?
ask-doubt-other_datum = { $field }: you measured from another mark than we do (“{ $text }”). How high is it above the water, in a flat calm and loaded as you cruise?
ask-doubt-ambiguous = { $field }: “{ $text }” can be read in more than one way. Which figure do you mean?

bracket-lower = lower bracket
bracket-upper = upper bracket

# --- names of fields, as labels ---

field-other = one of your figures
field-boat-builder = builder
field-boat-model = model
field-boat-year = year built
field-boat-loa_mm = length overall
field-boat-lwl_mm = waterline length
field-boat-beam_mm = beam
field-boat-draft_mm = draft
field-boat-displacement_kg = displacement
field-boat-hull_material = hull material
field-boat-stern = shape of the stern
field-transom-top_height_mm = height of the transom's top edge above the water
field-transom-bottom_height_mm = height of the transom's bottom edge above the water
field-transom-rake_deg = rake of the transom
field-transom-profile = centreline profile
field-transom-sections = plan sections
field-transom-width_top_mm = width of the transom at the top
field-transom-width_waterline_mm = width of the transom at the waterline
field-transom-camber_mm = camber of the transom
field-transom-thickness_mm = thickness of the skin
field-transom-core_mm = thickness of the core
field-transom-step_height_mm = height of the step above the water
field-transom-step_depth_mm = depth of the step
field-transom-step_width_mm = width of the step
field-transom-lower_rake_deg = rake of the skin under the step
field-transom-post_width_mm = width of the sternpost
field-main_rudder-hung = how the main rudder is hung
field-main_rudder-stock_aft_mm = position of the rudder stock
field-main_rudder-leading_edge_aft_mm = leading edge of the main rudder
field-main_rudder-trailing_edge_aft_mm = trailing edge of the main rudder
field-main_rudder-top_height_mm = top of the main rudder's blade above the water
field-main_rudder-bottom_height_mm = bottom of the main rudder's blade above the water
field-main_rudder-max_deflection_deg = how far the main rudder turns each way
field-obstacles = what stands on the stern
field-waterline = waterline as loaded
field-interactions = several figures acting together

# --- what can stand on a stern, and where ---

thing-ladder = ladder
thing-platform = platform
thing-davits = davits
thing-outboard = outboard motor
thing-exhaust = exhaust
thing-rail = rail
thing-stay = stay
thing-boom = boom
thing-boomkin = boomkin
thing-arch = arch
thing-panels = solar panels
thing-mast = mast
thing-staff = flagstaff
thing-passerelle = passerelle
thing-locker = locker
thing-other = other fitting
thing-at = { $side ->
    [port] { $thing } (to port)
    [starboard] { $thing } (to starboard)
    [centre] { $thing } (amidships)
    [both] { $thing } (on both sides)
   *[across] { $thing } (right across)
}

# --- words of a field that is no number ---

word-plumb = plumb
word-raked = raked
word-reverse = reverse
word-scoop = scoop
word-open = open
word-double_ended = double-ended
word-inboard = under the hull
word-transom = outside, on the transom
word-frp_solid = solid fibreglass
word-frp_cored = cored fibreglass
word-wood = wood
word-aluminium = aluminium
word-steel = steel

# --- what a check looks at, as a label ---

check-reach = reach of the { $bracket }
check-pad = thickness of the pad under the { $bracket }
check-seat = sound skin under the { $bracket }
check-strut = struts of the { $bracket }
check-gap = width of the sternpost in the { $bracket }
check-stands = height above the step of the { $bracket }
check-spacing = distance between the brackets
check-overhang = length of shaft below the lower bracket
check-head = length of shaft above the upper bracket
check-foot = length of shaft at the lower bracket
check-immersion = depth of the blade in the water
check-root_depth = depth of the top of the blade
check-main_rudder = room between the gear and the main rudder
check-hull = room between the gear and the hull
check-displacement = displacement for this size of gear
check-wake = clean water beside the main rudder
check-obstacle = room between the gear and this: { $thing }
check-load = strength of shaft and brackets
