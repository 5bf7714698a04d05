# Bezeichnungen stehen allein, hinter einem Doppelpunkt oder in Klammern: so muss nichts gebeugt werden.

percent = { $number } %
or = { $first } oder { $last }

# --- der Brief ---

reply-subject = Selbststeueranlage für { $boat }
reply-subject-bare = Ihre Anfrage zur Selbststeueranlage
reply-hello-name = Guten Tag { $name },
reply-hello = Guten Tag,
reply-thanks = { $whose ->
    [owner] vielen Dank für Ihre Anfrage zu Ihrer { $boat }.
   *[other] vielen Dank für Ihre Anfrage zur { $boat }.
}
reply-thanks-bare = vielen Dank für Ihre Anfrage.
reply-unsure = Welcher Bootstyp es genau ist, wissen wir noch nicht sicher.
reply-regards = Mit freundlichen Grüßen
reply-desk = Ihr Verkaufsteam

heading-suggest = Unser Vorschlag
heading-why = Warum
heading-sure = Wie sicher wir sind
heading-buy = Was Sie selbst beschaffen
heading-ask = Bevor wir liefern, brauchen wir noch von Ihnen
heading-care = Bitte beachten
heading-nothing = Noch passt nichts

reply-suggest = Wir schlagen die Anlage { $gear } vor, mit dem unteren Halter { $lower }, dem oberen Halter { $upper } und dem Schaft { $shaft }.
reply-verdict = { $verdict ->
    [fits] Nach den Maßen, die wir haben, passt sie.
    [tight] Nach den Maßen, die wir haben, passt sie, aber nur knapp.
   *[undecided] Ob sie passt, lässt sich noch nicht sagen: Ein Maß, von dem es abhängt, fehlt uns, und auch andere Boote verraten es nicht.
}
reply-place = { $side ->
    [centre] Sie sitzt mittschiffs
    [port] Sie sitzt { $offset } backbord von der Mitte
   *[starboard] Sie sitzt { $offset } steuerbord von der Mitte
}, der Schaft { $aft } achterlich der Spiegeloberkante, die Mitten der beiden Lagerschellen { $lower } und { $upper } über Wasser.
reply-trades = Am Boot ist dafür zu tun:
trade-take-off = abbauen: { $thing }
trade-build-up = Außenhaut verstärken lassen, und zwar dahinter: { $bracket }

reply-sisters = { $count ->
    [0] Ein Schwesterschiff haben wir nicht in unseren Unterlagen, deshalb haben wir die ähnlichsten Boote angesehen.
    [one] Wir haben ein Schwesterschiff in unseren Unterlagen.
   *[other] Wir haben { $count } Schwesterschiffe in unseren Unterlagen.
}
reply-same = { $same ->
    [0] Von den { $looked } Booten, die wir uns näher angesehen haben, fährt keines genau diese Zusammenstellung.
    [one] Von den { $looked } Booten, die wir uns näher angesehen haben, fährt eines genau diese Zusammenstellung.
   *[other] Von den { $looked } Booten, die wir uns näher angesehen haben, fahren { $same } genau diese Zusammenstellung.
}
reply-tried = Gefunden haben wir sie, indem wir unsere Teile der Reihe nach an Ihren Maßen durchprobiert haben.
reply-likest = Am ähnlichsten ist Ihrem Boot die Nummer { $record } in unseren Unterlagen. Das ist bei Ihnen anders:
reply-alike = Am ähnlichsten ist Ihrem Boot die Nummer { $record } in unseren Unterlagen; in allem, was wir von beiden wissen, stimmen sie überein.
reply-differs = { $field }: dort { $theirs }, bei Ihnen { $ours }
reply-hers-only = { $field }: dort { $theirs }
reply-ours-only = { $field }: bei Ihnen { $ours }
contrast-fails = Mit { $theirs } statt { $ours } ({ $field }) ginge diese Anlage nicht ans Boot.
contrast-moves = Mit { $theirs } statt { $ours } ({ $field }) stünde der Schaft { $aft } in Längsrichtung versetzt (+ ist achteraus), die untere Lagerschelle { $lower } und die obere { $upper } in der Höhe.

reply-chance = Dass an Ihrem Boot alles freigeht, schätzen wir auf { $chance }.
reply-doubt = Was an Zweifel bleibt, hängt ab von:
reply-doubt-line = { $field }: { $share } davon
reply-filled = { $source ->
    [sister_ships] Nicht genannt, daher von Schwesterschiffen übernommen: { $fields }.
    [neighbours] Nicht genannt, daher von ähnlichen Booten übernommen: { $fields }.
   *[prior] Nicht genannt, daher wie üblich angenommen: { $fields }.
}

also = { $first }; { $last }
and-more = { $list } und { $count } weitere
reply-nothing = Nach den Maßen, die wir haben, passt an das Boot, so wie es ist, nichts von dem, was wir bauen. Am nächsten kommt die Anlage { $gear } mit dem unteren Halter { $lower }, dem oberen Halter { $upper } und dem Schaft { $shaft }.
reply-miss = Was im Weg steht: { $check }. Es fehlen { $amount }.
reply-cures = Ausprobiert haben wir, was helfen würde:
reply-no-cure = Ein einzelnes Teil abzubauen oder zu tauschen hilft nicht. Schreiben Sie uns, was sich versetzen lässt, dann sehen wir noch einmal nach.
cure-without = ohne dies: { $thing }
cure-shaft = stattdessen Schaft { $code }
cure-bracket = { $bracket }: stattdessen { $code }
reply-none = Was wir von dem Boot wissen, reicht für einen Vorschlag noch nicht.

# --- was der Eigner beschafft ---

supply-bolts = { $bracket }: { $count } durchgehende Schrauben { $size } × { $length } mit Scheiben und Muttern
supply-bolts-open = { $bracket }: { $count } durchgehende Schrauben { $size } mit Scheiben und Muttern; die Länge, sobald die Außenhaut gemessen ist
supply-sealant = Dichtmasse für die Bolzenlöcher
supply-backing = Gegenplatten nach Zeichnung (Edelstahl 1.4401, Aluminium oder versiegeltes Bootsbau-Sperrholz)
supply-core = Epoxid, um den Kern rings um jedes Loch zu füllen, oder Druckhülsen
supply-insulate = Isolierscheiben und Isolierhülsen zwischen Edelstahl und Rumpf
supply-tube = ein gerades Rohr vom Durchmesser des Schafts, um vor dem Bohren alles auszuloten

# --- was zu beachten ist ---

caution-confirm = Dies ist ein Rat, errechnet aus dem, was man uns genannt hat. Prüfen Sie jedes Maß am Boot nach, bevor Metall bestellt oder ein Loch gebohrt wird.
caution-holes = Löcher im Rumpf können ein Boot versenken. Fragen Sie die Werft oder einen Sachverständigen, ob die Außenhaut dort durchbohrt werden darf und wie sie zu hinterlegen ist; örtliche Vorschriften und Klasse gehen vor.
caution-plumb = Richten Sie den Schaft vor dem Bohren mit einem Proberohr in beiden Richtungen lotrecht aus; zuerst kommt der untere Halter.
caution-cored = Die Außenhaut hat einen Kern: Um jedes Loch muss der Kern entfernt und ausgefüllt oder mit einer Hülse gestützt werden, sonst wird er zerdrückt und zieht Wasser.
caution-metal = Edelstahl auf einem Metallrumpf lässt den Rumpf korrodieren: Isolieren Sie jede Schraube, jeden Flansch und jede Platte.
caution-moves = Am Heck bewegt sich etwas, und wir wissen nicht, wohin: Bewegen Sie es bei angehaltenem Proberohr einmal ganz durch.
caution-low-hole = Das unterste Bolzenloch liegt { $height } über Wasser: Lassen Sie vor dem Bohren einen Sachverständigen zustimmen.
caution-weak-skin = Nach üblichen Werten ist die Außenhaut hinter einem Halter schwächer, als die Lasten verlangen: Werft oder Sachverständiger sollen sagen, wie sie zu verstärken ist, bevor gebohrt wird.
caution-shaking = Bei manchen Geschwindigkeiten können Wirbel den Schaft zittern lassen: Achten Sie bei der ersten Fahrt darauf, und lassen Sie dann das freie Ende kürzen.
caution-tight = Es ist knapp: Nach den genannten Maßen passt es, aber nicht sicher. Messen Sie noch einmal nach, wovon der Zweifel abhängt.

# --- wie weit die Erfahrung reicht ---

backing-nothing = Noch ist kein Einbau verzeichnet: Die Vorschläge beruhen allein auf Geometrie und Lasten, und was Monteure wählen würden, weiß niemand.
backing-no-like = Kein verzeichnetes Boot lässt sich mit diesem vergleichen: Gezählt wurde, wie oft etwas überhaupt eingebaut wurde.
backing-nearest = { $known ->
    [yes] Von der { $model } ist keine verzeichnet
   *[no] Der Bootstyp ist nicht bekannt, also spricht kein Schwesterschiff mit
}: Was Monteure einbauen würden, ist nach anderen Booten beurteilt; das nächste ist zu { $like } ähnlich.
backing-unlike = { $known ->
    [yes] Von der { $model } ist keine verzeichnet
   *[no] Der Bootstyp ist nicht bekannt, also spricht kein Schwesterschiff mit
}: Was Monteure einbauen würden, ist nach anderen Booten beurteilt; das nächste ist zu { $like } ähnlich, und selbst das ist ein recht anderes Boot.
backing-stern = { $count ->
    [0] Mit diesem Heck ({ $stern }) ist kein Boot verzeichnet
    [one] Mit diesem Heck ({ $stern }) ist nur ein Boot verzeichnet
   *[other] Mit diesem Heck ({ $stern }) sind nur { $count } Boote verzeichnet
}: Was andere fahren, sagt hier wenig; die Vorschläge beruhen auf Geometrie.
backing-tried = Nichts von dem, was ähnliche Boote fahren, geht hier: Der Vorschlag wurde gefunden, indem der Katalog an den Maßen durchprobiert wurde.
stern-plumb = senkrechter Spiegel
stern-raked = überhängender Spiegel
stern-reverse = negativer Spiegel
stern-scoop = Heck mit Badestufe
stern-open = offenes Heck
stern-double_ended = Spitzgatt

# --- Fragen ---

ask-hull = Welches Boot ist es genau: { $names }? Baujahr und Werftschild würden es zeigen.
ask-boat-model = Welches Boot ist es: Werft, Typ und Baujahr?
ask-transom-top_height_mm = Wie hoch liegt die Oberkante des Spiegels über Wasser? In der Mitte, bei glattem Wasser und in Fahrtbeladung: von der Wasseroberfläche bis zur höchsten Stelle der Außenhaut, die einen Halter tragen könnte, ohne Reling, Abdeckleiste oder Süll. Auf { $exact } genau reicht.
ask-transom-rake_deg = Wie weit weicht der Spiegel von der Senkrechten ab, und in welche Richtung? Halten Sie Wasserwaage oder Lot in der Mitte an und schreiben Sie uns, ob die Oberkante weiter achtern liegt als die Unterkante (überhängend) oder weiter vorn (negativ). Auf { $exact } genau reicht.
ask-transom-bottom_height_mm = Wie hoch über Wasser endet der Spiegel unten? In der Mitte; mit Minuszeichen, wenn er unter Wasser endet. Auf { $exact } genau reicht.
ask-transom-width_top_mm = Wie breit ist der Spiegel oben? Die ganze Breite an der Oberkante, auf { $exact } genau.
ask-transom-width_waterline_mm = Wie breit ist der Spiegel an der Wasserlinie, oder an seiner Unterkante, wenn diese höher liegt? Die ganze Breite, auf { $exact } genau.
ask-transom-thickness_mm = Wie dick ist die Außenhaut dort, wo die Bolzen durchgehen? An einem Borddurchlass oder einem Bohrloch gemessen: alles zusammen, mit Kern, auf { $exact } genau.
ask-transom-camber_mm = Wie stark ist der Spiegel gewölbt? Halten Sie eine gerade Latte waagerecht so an die Oberkante, dass sie in der Mitte anliegt, und nennen Sie uns die halbe Summe der Spalte an beiden Enden, auf { $exact } genau.
ask-transom-step_height_mm = Wie hoch liegt die Oberseite der Stufe über Wasser? Bei glattem Wasser, in Fahrtbeladung, auf { $exact } genau.
ask-transom-step_depth_mm = Wie tief ist die Stufe? In Längsrichtung, vom Fuß der senkrechten Wand bis zur achteren Kante, auf { $exact } genau.
ask-transom-step_width_mm = Wie breit ist die Stufe quer zum Schiff, dort wo sie eben ist? Auf { $exact } genau.
ask-transom-post_width_mm = Wie breit ist der Achtersteven dort, wo die Halter ihn fassen würden? Mit dem Messschieber in beiden Höhen, auf { $exact } genau.
ask-main_rudder-hung = Wie ist das Hauptruder angebracht: unter dem Rumpf, oder außen am Spiegel oder Achtersteven?
ask-main_rudder-trailing_edge_aft_mm = Wie weit reicht das Hauptruder nach achtern? Hängen Sie ein Lot an die Spiegeloberkante und messen Sie in Längsrichtung bis zur hintersten Kante des Ruders; mit Minuszeichen, wenn sie vor dem Lot liegt. Auf { $exact } genau reicht.
ask-main_rudder-stock_aft_mm = Wo liegt der Ruderschaft des Hauptruders? In Längsrichtung von einem Lot an der Spiegeloberkante aus; mit Minuszeichen nach vorn. Auf { $exact } genau reicht.
ask-boat-displacement_kg = Was wiegt das Boot in Fahrtbeladung? Auf { $exact } genau reicht; schreiben Sie dazu, ob die Zahl leer oder beladen gilt.
ask-boat-stern = Welche Form hat das Heck dort, wo der untere Halter säße: senkrecht, überhängend, negativ, mit angeformter Stufe, offen oder spitzgatt? Ein Foto von der Seite sagt es am besten.
ask-obstacle = Wo genau ist dies: { $thing }? Von wo bis wo achterlich der Spiegeloberkante, wie weit neben der Mitte, wie hoch über Wasser? Auf { $exact } genau reicht.
ask-obstacles = Was steht am Heck: Leiter, Plattform, Davits, Außenborder, Auspuff, Heckkorb, Stagen, Bäume, ein Geräteträger? Sagen Sie uns zu jedem, wie weit neben der Mitte es beginnt und endet, wie weit es nach achtern und wie hoch über Wasser es reicht (auf { $exact } genau reicht), ob es klappt oder schwenkt und ob es weg darf. Ein Foto von achtern hilft.
ask-doubt-contradictory = { $field }: Sie nennen { $values }. Was stimmt?
ask-doubt-sign_unknown = { $field }: Sie schreiben „{ $text }“. In welche Richtung gilt das: achteraus oder nach vorn, über oder unter Wasser?
ask-doubt-unit_unknown = { $field }: Sie schreiben „{ $text }“. In welcher Einheit?
ask-doubt-other_datum = { $field }: Sie haben von einer anderen Stelle aus gemessen als wir („{ $text }“). Wie hoch ist es über Wasser, bei glattem Wasser und in Fahrtbeladung?
ask-doubt-ambiguous = { $field }: „{ $text }“ lässt sich verschieden lesen. Welches Maß meinen Sie?

bracket-lower = unterer Halter
bracket-upper = oberer Halter

# --- Namen der Angaben ---

field-other = eine Ihrer Angaben
field-boat-builder = Werft
field-boat-model = Typ
field-boat-year = Baujahr
field-boat-loa_mm = Länge über alles
field-boat-lwl_mm = Länge der Wasserlinie
field-boat-beam_mm = Breite
field-boat-draft_mm = Tiefgang
field-boat-displacement_kg = Verdrängung
field-boat-hull_material = Baumaterial des Rumpfs
field-boat-stern = Form des Hecks
field-transom-top_height_mm = Höhe der Spiegeloberkante über Wasser
field-transom-bottom_height_mm = Höhe der Spiegelunterkante über Wasser
field-transom-rake_deg = Neigung des Spiegels
field-transom-profile = Kontur in der Mittellinie
field-transom-sections = waagerechte Schnitte
field-transom-width_top_mm = Breite des Spiegels oben
field-transom-width_waterline_mm = Breite des Spiegels an der Wasserlinie
field-transom-camber_mm = Wölbung des Spiegels
field-transom-thickness_mm = Dicke der Außenhaut
field-transom-core_mm = Dicke des Kerns
field-transom-step_height_mm = Höhe der Stufe über Wasser
field-transom-step_depth_mm = Tiefe der Stufe
field-transom-step_width_mm = Breite der Stufe
field-transom-lower_rake_deg = Neigung der Außenhaut unter der Stufe
field-transom-post_width_mm = Breite des Achterstevens
field-main_rudder-hung = Anbringung des Hauptruders
field-main_rudder-stock_aft_mm = Lage des Ruderschafts
field-main_rudder-leading_edge_aft_mm = Vorderkante des Hauptruders
field-main_rudder-trailing_edge_aft_mm = Hinterkante des Hauptruders
field-main_rudder-top_height_mm = Oberkante des Hauptruderblatts über Wasser
field-main_rudder-bottom_height_mm = Unterkante des Hauptruderblatts über Wasser
field-main_rudder-max_deflection_deg = Ausschlag des Hauptruders nach jeder Seite
field-obstacles = was am Heck steht
field-waterline = Wasserlinie in Fahrtbeladung
field-interactions = mehrere Maße im Zusammenspiel

# --- was am Heck stehen kann ---

thing-ladder = Badeleiter
thing-platform = Badeplattform
thing-davits = Davits
thing-outboard = Außenborder
thing-exhaust = Auspuff
thing-rail = Heckkorb
thing-stay = Achterstag
thing-boom = Baum
thing-boomkin = Heckausleger
thing-arch = Geräteträger
thing-panels = Solarpaneele
thing-mast = Mast
thing-staff = Flaggenstock
thing-passerelle = Gangway
thing-locker = Backskiste
thing-other = sonstiger Beschlag
thing-at = { $side ->
    [port] { $thing } (backbord)
    [starboard] { $thing } (steuerbord)
    [centre] { $thing } (mittschiffs)
    [both] { $thing } (beide Seiten)
   *[across] { $thing } (über die ganze Breite)
}

word-plumb = senkrecht
word-raked = überhängend
word-reverse = negativ
word-scoop = mit Badestufe
word-open = offen
word-double_ended = spitzgatt
word-inboard = unter dem Rumpf
word-transom = außen am Spiegel
word-frp_solid = GFK massiv
word-frp_cored = GFK mit Kern
word-wood = Holz
word-aluminium = Aluminium
word-steel = Stahl

# --- was geprüft wird ---

check-reach = Reichweite ({ $bracket })
check-pad = Dicke der Unterlage ({ $bracket })
check-seat = tragfähige Außenhaut unter dem Flansch ({ $bracket })
check-strut = Streben ({ $bracket })
check-gap = Breite des Achterstevens ({ $bracket })
check-stands = Höhe über der Stufe ({ $bracket })
check-spacing = Abstand der Halter voneinander
check-overhang = freies Ende des Schafts unter dem unteren Halter
check-head = freies Ende des Schafts über dem oberen Halter
check-foot = Schaftende am unteren Halter
check-immersion = Eintauchtiefe des Blatts
check-root_depth = Tiefe der Blattoberkante
check-main_rudder = Abstand zum Hauptruder
check-hull = Abstand zum Rumpf
check-displacement = Verdrängung für diese Größe der Anlage
check-wake = freies Wasser neben dem Hauptruder
check-obstacle = Abstand hierzu: { $thing }
check-load = Festigkeit von Schaft und Haltern
