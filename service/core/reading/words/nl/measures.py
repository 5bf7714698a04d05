"""Dutch: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "lang over alles|lang",
    "HEIGHT": "hoogte|hoog|hoge|vrijboord|hoogtes|hoogte boven|hoger|in de hoogte|hoogtemaat",
    "WIDTH": (
        "spiegelbreedte|breedte|breed|brede|in de breedte|breedte boven|breedte spiegel|breed boven|"
        "spiegel breedte|breedte spiegel boven|spiegel boven breed|breedte van de spiegel boven|breedtes|"
        "van zij tot zij|dwars gemeten|dwarsscheeps|in breedte|breedtemaat|van kant tot kant|bredte"
    ),
    "THICK": (
        "spiegeldikte|dikte|dik|plaatdikte|dikke|wanddikte|huiddikte|laminaatdikte|dikte spiegel|materiaaldikte|"
        "diktes|rompdikte|spiegelplaatdikte|totale dikte|in dikte|huiddiktes|wanddiktes|spiegeldiktes|plaatdiktes"
    ),
    "DEPTH": (
        "van voor naar achter|voor naar achter|in lengterichting|langsscheeps|van voor tot achter|"
        "van voren naar achteren|diepte|diep|diepe"
    ),
    "LOA": (
        "lengte|lengte o a|lengte over alles|loa|l o a|totale lengte|romplengte|scheepslengte|lengte totaal|"
        "scheepslengte over alles|l.o.a|over alles|lengte schip|lengte boot|romp lengte|totale scheepslengte|"
        "lengte van de boot|bootlengte"
    ),
    "LWL": "lengte waterlijn|lwl|lengte op de waterlijn|lengte wl",
    "BEAM": (
        "grootste breedte|breedte over alles|breedte boot|max breedte|maximale breedte|breedte o a|b o a|"
        "grootste scheepsbreedte|scheepsbreedte|bootbreedte|breedte schip|romp breedte|b.o.a|breedte totaal|"
        "breedste punt|bmax|grootste breedte van|breedte over berghout"
    ),
    "DRAFT": (
        "diepg|diepgang|steekt|steekt diep|diepgang van|diepte kiel|diepgangen|diepstekend|diepgang met|"
        "diepte van de kiel|ligt diep|diepgang max"
    ),
    "DISPLACEMENT": (
        "waterverplaatsing|gewicht|weegt|deplacement|verplaatst|wegen|zwaar|gewogen|waterverplaatsing van|"
        "totaalgewicht|kraan|weegbrug|tonnage|waterverplaatsingen|woog|weegt ongeveer|eigen gewicht|leeggewicht|"
        "scheepsgewicht|bootgewicht|gewicht leeg|vaarklaar|takelgewicht|kraangewicht|gewicht van de boot|"
        "totaal gewicht|op de weegschaal|kraanweging|zeilklaar"
    ),
    "BALLAST": "ballast|motor|bijboot|kiel|bijbootje|rubberboot|ankers|bemanning|dinghy|kielgewicht",
    "RAKE": (
        "spiegelhoek|helling|hoek|hellingshoek|helling van de spiegel|schuinte|hoek van de spiegel|hellend|"
        "spiegel helling|schuin|ten opzichte van de loodlijn|uit het lood|met de verticaal|"
        "ten opzichte van verticaal|hellingshoek van de spiegel|spiegelhelling|schuinstand|uit loodrecht|"
        "t.o.v. verticaal|hellingen|schuinte van de spiegel|met de loodlijn|inclinatie"
    ),
    "LEAN": (
        "achterover|voorover|helt|hellend|leunt|valt|hellende|schuin|staat schuin|achterover hellend|"
        "loopt schuin|leunend|overhelt|helt over|hangt over|leunt over|loopt af|afgeschuind|hangend|leunende|"
        "overhellend|gekanteld|kantelt|valt terug|helde|schuine|schuinstaand"
    ),
    "TURN": (
        "naar elke kant|roeruitslag|uitslag|aan elke kant|elke kant op|per kant|maximale uitslag|"
        "naar beide kanten|naar weerszijden|maximale roeruitslag|roerhoek|maximale roerhoek|roerstand|"
        "naar weerskanten|weerskanten|aan weerszijden|uitslaan|uitslagen|max uitslag|max. uitslag|"
        "slag van het roer|aanslagen|naar elke zijde|per zijde|slaat uit|naar beide zijden"
    ),
    "FORWARD": (
        "ervoor|daarvoor|er voor|vóór de|voor de|naar voren|verder naar voren|vóór|voorover|naar voor|"
        "verder voren|vooruit|verder vooruit|meer naar voren|richting boeg|vooraan|voor het|verder voor|"
        "naar de boeg|boegwaarts|meer voor|voorwaarts|naar binnen|voor de spiegel|vóór het|voor op|"
        "verder vooruit dan|richting kuip|meer vooruit|voorlijker|voor spiegel|voor de bovenkant|"
        "voor de achtersteven|voor bovenrand|voor de bovenrand|voor het hek|net voor"
    ),
    "AFT": (
        "erachter|daarachter|er achter|achterover|naar achteren|verder naar achteren|achter de|"
        "verder naar achteren dan|naar achter|meer naar achteren|achteruit|verder naar achter|achter het|"
        "richting achter|achterlijker|uit de spiegel|naar het hek|achterwaarts|voorbij de|achter de spiegel|"
        "verder achter|meer achter|naar buiten|achterlijker dan|achter de achterkant|voorbij|meer achteruit|"
        "achterlijk|buiten de spiegel|achter spiegel|achter de bovenrand|achter bovenkant|achter bovenrand|"
        "achter de bovenkant"
    ),
    "TOP": (
        "bovenhoek|bovenste hoek|hoek bovenaan|boven steekt|boven steekt hij|boven steekt ze|bovenaan steekt|"
        "boven ligt hij|boven staat hij|kop van het roer|roerkop|bovenkant roer|bovenkant van het roer|"
        "kop van de steven|stevenkop|kop van de achtersteven|bovenin|rand van de spiegel|spiegelrand|tot het dek|"
        "tot aan dek|tot dek|komt tot|loopt door tot|reikt tot|bovenkant|bovenrand|bovenaan|bovenzijde|"
        "bovenste rand|bovenkant spiegel|bovenkant van de spiegel|spiegel bovenkant|dekrand|bovenste kant|"
        "spiegel boven|bovenzij|breedte spiegel boven|breedte boven|breed boven|breedte van de spiegel boven|"
        "hoogste punt|bovenste|bovenste punt|bovenkanten|bovenste deel|top|helemaal boven|bovenlijst|"
        "bovenrand van de spiegel|spiegelbovenkant|hekspiegelbovenkant|dekhoogte|rand boven|bovenboord|"
        "op zijn hoogst|hoogste deel|aan de bovenkant|bovenkantje|spiegelrand boven|hekspiegelrand|is boven|"
        "van boven|boven is|boven breed|zijn boven|boven aan|van dek|vanaf het dek|vanaf dek|het dek"
    ),
    "BOTTOM": (
        "dan onder|dan onderaan|dan beneden|onderkant roer|onderkant van het roer|voet van het roer|"
        "loopt door tot|loopt af tot|onderkant|onderrand|onderzijde|onderaan|onderste rand|onderkant spiegel|"
        "onderkant van de spiegel|spiegel onderkant|onderste kant|voet van de spiegel|onderzij|laagste punt|"
        "onderste|onderste punt|onderste deel|onderkanten|voet|helemaal onder|helemaal onderaan|"
        "onderrand van de spiegel|spiegelonderkant|op zijn laagst|aan de onderkant|laagste deel"
    ),
    "WATER": (
        "waterlijn|water|wateroppervlak|waterspiegel|constructiewaterlijn|cwl|kwl|vrijboord|onder water|"
        "onder de waterlijn|beneden de waterlijn|onder waterlijn|in het water|op de waterlijn|net aan het water|"
        "precies op de waterlijn|net in het water|waterniveau|waterpeil|wateroppervlakte|waterlijntje|lastlijn|"
        "zeespiegel|wl|dwl|waterkant|ontwerpwaterlijn|waterlijnen|boven wl|vrijboord achter|vanaf het water|"
        "water lijn|is boven water|is boven de waterlijn|zijn boven water|van boven water|van boven de waterlijn|"
        "onder het oppervlak|onder het wateroppervlak|onder de waterspiegel|onder wl|ondergedompeld|"
        "onder water steekt|steekt in het water|zit onder water|onder water met"
    ),
    "AT_WATER": "op de waterlijn|net aan het water|precies op de waterlijn|net in het water",
    "JUST_TOUCH": "raakt net|raakt|precies op|gelijk met|net op|ter hoogte van|op waterhoogte|ligt op",
    "BELOW": (
        "onder water|onder de waterlijn|beneden de waterlijn|onder waterlijn|in het water|onder wl|onder de wl|"
        "onderwater|eronder|onder het oppervlak|onder het wateroppervlak|onder de waterspiegel|ondergedompeld|"
        "steekt in het water|zit onder water|onder water met"
    ),
    "BOOTSTRIPE": "waterlijnbies|bies|waterpas|boottop|boeg bies|sierbies",
    "TOERAIL": (
        "voetrail|voetreling|voetlijst|potdeksel|verschansing|berghout|boeisel|gatenrail|teenlijst|teaklijst|"
        "dekrand lijst|opstaande rand|schandek|teak lijst|relinglijst|dekbiezen|potdeksels"
    ),
    "COCKPIT": "kuipvloer|kuip|vloer van de kuip|kuipbodem|rand van de kuipvloer|rand van de kuipbodem|kuiprand",
    "STEP": (
        "zwemtrede|trede|traptrede|zwemtreden|ingebouwde trede|ingevormde trede|treden|ingevormd zwemplateau|"
        "geïntegreerd zwemplateau|ingebouwd zwemplateau|zwemplateau in de romp|zwemplateau in de spiegel"
    ),
    "ENDS": "eindigt|houdt op|stopt|eindigen|stoppen|is afgelopen|eindigend|ophoudt|ophouden|eindigde|afloopt",
    "STICK_OUT": (
        "steekt achter|steekt uit|uitsteekt|steekt|uitstekend|uitsteken|steken uit|steekt naar achteren|"
        "buiten de spiegel|uitstekende|steekt voorbij|steekt naar buiten|steekt over|steekt er|uitsteeksel|"
        "steekt achteruit|steekt buiten|uitspringt|springt uit|steekt eruit|steekt achterwaarts|"
        "komt naar achteren|gaat naar achteren"
    ),
    "M_TAPE": (
        "meetlint|rolmaat|centimeter|duimstok|met de rolmaat|meetband|lintmeter|meetlat|vouwmeter|"
        "met de duimstok|met een rolmaat|rolmeter|centimeterlint|meetlintje|duimstokken|met een duimstok|"
        "met meetlint|timmermansduimstok|met de meetlat"
    ),
    "M_PHONE": (
        "telefoon|app|waterpas app|telefoonwaterpas|mobieltje|smartphone|iphone|waterpasapp|met de telefoon|"
        "telefoon app|waterpas op de telefoon|hellingapp|met de mobiel|waterpas van de telefoon|telefoonapp|"
        "smartphone app|mobiele telefoon|met mijn telefoon|appje"
    ),
    "M_INCL": "hoekmeter|inclinometer|gradenboog|waterpas|hellingmeter",
    "M_LASER": "laser|lasermeter|afstandsmeter",
    "M_DRAWING": (
        "tekening|tekeningen|lijnenplan|werftekening|bouwtekening|bouwtekeningen|werfplan|werftekeningen|"
        "lijnentekening|constructietekening|bouwplan|bouwplannen|zeilplan|zijaanzicht|van tekening|"
        "van de tekening|uit de tekening|volgens tekening|plan van de werf|werfplannen|ontwerptekening|"
        "ontwerptekeningen|algemeen plan|op de tekening"
    ),
    "M_BROCHURE": (
        "brochure|folder|volgens de werf|opgave werf|specificaties|specificatie|catalogus|werfopgave|handleiding|"
        "meetbrief|volgens folder|volgens de folder|volgens de brochure|volgens brochure|volgens de papieren|"
        "scheepspapieren|handboek|volgens opgave|opgave van de werf|werf opgave|fabrieksopgave|volgens de bouwer|"
        "volgens bouwer|volgens werf|prospectus|datasheet|volgens de specificaties|volgens de specs|"
        "volgens meetbrief|instructieboek|volgens het handboek|advertentie|verkoopfolder|testverslag"
    ),
    "M_GUESS": (
        "op het oog|geschat|schatting|naar schatting|schat|ruwe schatting|gegokt|gok|geschatte|natte vinger|"
        "op het oog geschat|met het oog|uit het hoofd|natte vingerwerk|met de natte vinger|nattevingerwerk|"
        "zo te zien|schatten|ik schat|grof geschat|naar mijn schatting|op de gok|gokje|ruwweg geschat|"
        "uit mijn hoofd|schattenderwijs|gevoelsmatig|op gevoel|schattingen|oogmaat|op oogmaat|met de franse slag|"
        "naar het oog|ik gok"
    ),
    "M_PHOTO": "foto|van een foto",
    "MEASURED": "gemeten|maten|afmetingen|meting|metingen|opgemeten|nagemeten|maat",
    "PLUMB_LINE": (
        "schietlood|paslood|loodlijn|loodje|lood aan een touwtje|touwtje met gewicht|lood|touwtje|koordje met"
    ),
    "GIVE_TAKE": (
        "plus minus|plus of min|met een marge van|marge|nauwkeurigheid|met een nauwkeurigheid van|"
        "nauwkeurigheid van|met een foutmarge van|foutmarge van|tolerantie van|met een tolerantie van|plusminus|"
        "marge van|onzekerheid van|afwijking van|met een onzekerheid van|met een afwijking van"
    ),
    "WITHIN": "nauwkeurig",
}
