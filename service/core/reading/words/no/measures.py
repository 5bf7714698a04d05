"""Norwegian: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "lang over alt|lang",
    "HEIGHT": (
        "høyde|høyden|høy|fribord|høydene|høyt|høyde over|høye|høyder|i høyden|høydemål|høydemål over|speilhøyde|"
        "akterspeilhøyde"
    ),
    "WIDTH": (
        "bredde|bredden|bred|bredt|brede|i bredden|bredde oppe|speilbredde|speilets bredde|bredder|"
        "fra side til side|tverrskips|på tvers|breddemål|bredde på|i bredde"
    ),
    "THICK": (
        "tykkelse|tykk|tykkelsen|tykt|godstykkelse|skrogtykkelse|laminattykkelse|platetykkelse|tykke|"
        "veggtykkelse|materialtykkelse|speiltykkelse|tjukk|tjukt|tjukkelse|tykkere|godset"
    ),
    "DEPTH": "i lengderetning|langskips|forfra og bakover|fra for til akter|dybde|dypt|dyp|dype",
    "LOA": (
        "over alt|"
        "lengde|lengden|lengde over alt|loa|båtens lengde|lengde o a|l o a|total lengde|skroglengde|l.o.a|"
        "lengde overalt|skroglengden|båtlengde|største lengde|lengda|lengde på båten"
    ),
    "LWL": "lvl|vannlinjelengde|lengde i vannlinjen|lwl|lengde vl",
    "BEAM": (
        "største bredde|båtens bredde|bredde maks|maks bredde|største bredden|bredde over alt|max bredde|b o a|"
        "skrogbredde|båtbredde|bmax|bredeste punkt|bredden på båten|total bredde"
    ),
    "DRAFT": (
        "dypgående|dyptgående|dypgang|stikker dypt|dypgangen|dybde|dypgåing|stikker|dypgåande|dypgående på|"
        "djupgående|går dypt"
    ),
    "DISPLACEMENT": (
        "deplasement|deplasementet|vekt|veier|vekten|vekta|deplaserer|vekt ca|båtens vekt|totalvekt|veid|"
        "lastet vekt|kran|veide|egenvekt|tørrvekt|seilklar|kranvekt|fullt utrustet|deplasement på|veiing|"
        "løftevekt|tonnasje|på vekta|båten veier|lettvekt"
    ),
    "BALLAST": "ballast|kjøl|motor|jolle|kjølen|motoren|jolla|ballastvekt|anker|mannskap",
    "RAKE": (
        "helning|vinkel|hellingen|helningsvinkel|vinkelen|speilets helning|skråning|hellning|hellingsvinkel|"
        "helningen|fra loddrett|fra vertikalen|ut av lodd|skråstilling|helningsvinkelen|speilhelning|"
        "mot vertikalen|fra lodd|rake|akterspeilets helning"
    ),
    "LEAN": (
        "heller|hellende|skråner|skrå|faller|hellet|lener|vinklet|helle|lener seg|helter|helling|skrått|"
        "skråstilt|heller ut|lutende|luter"
    ),
    "TURN": (
        "til hver side|rorutslag|til hver sin side|hver vei|til begge sider|maks utslag|utslag|hver side|pr side|"
        "maks rorutslag|rorvinkel|maksimalt utslag|maksimalt rorutslag|rorutslaget|utslaget|til begge kanter|"
        "hver veg|fullt utslag|til hver kant|maks rorvinkel|til hver av sidene|utslag på|i hver retning|"
        "hver retning|vrir|rorvinkelen|hvert slag"
    ),
    "FORWARD": (
        "forover|lenger framme|lenger fremme|foran|framover|lenger fram|lenger forut|lengre fram|lengre framme|"
        "forut|fremover|mot baugen|for speilet|foran speilet|lengre fremme|forenom|lenger forover|"
        "foran akterspeilet|fram|framfor|innover|forenfor|mot forstavnen|forom|lenger fremover|innenfor|"
        "for akterspeilet|for overkanten"
    ),
    "AFT": (
        "akterover|lenger akter|bakover|aktenfor|bak|lenger bak|lengre bak|akterut|mot hekken|lenger akterut|"
        "lengre akterut|aktenom|bakenfor|lengre akter|akter|ut bak|bak speilet|aktover|bakom|bak akterspeilet|"
        "lenger akterover|aktom|utover|utenfor speilet|bakut|aktafor|bak overkanten"
    ),
    "TOP": (
        "toppen av roret|rortopp|rortoppen|rorhode|rorhodet|rorets topp|stevnens topp|stevntoppen|"
        "kanten av speilet|kanten av akterspeilet|speilkanten|til dekk|opp til dekk|til dekket|går opp til|"
        "når opp til|overkant|overkanten|øverst|øvre kant|øvre kanten|oppe|overkanten av|toppen|øverste kant|"
        "topp|dekkskanten|overside|på toppen|toppen av stevnen|toppen av akterstevnen|bredde oppe|øverste|"
        "øverste punkt|høyeste punkt|høyeste|øvre|dekkskant|oversiden|øvre del|øverste del|toppkant|toppkanten|"
        "oventil|øvre ende|i toppen|fra dekk|dekket|fra dekket|dekk"
    ),
    "BOTTOM": (
        "rorets underkant|bunnen av roret|underkanten av roret|går ned til|underkant|underkanten|nederkant|"
        "nedre kant|nedre kanten|nede|nederst|nederste kant|bunnen av speilet|underside|nederkanten|nedkant|"
        "bunnen|nederste|nederste punkt|laveste punkt|nedre|undersiden|bunn|nedre del|nederste del|nedentil|"
        "foten|laveste|nedre ende|i bunnen"
    ),
    "WATER": (
        "vannlinja|vannlinjen|vannet|vann|vannflaten|vannoverflaten|vl|kvl|vannlinje|vannlinjens|vannstanden|"
        "vannspeilet|fribord|under vannet|under vannlinja|under vannlinjen|under vl|under vannflaten|under vann|"
        "i vannet|akkurat i vannlinjen|i vannlinjen|ved vannlinjen|like i vannlinja|i vannflaten|berører vannet|"
        "i vannlinja|akkurat ved vannflaten|på vannlinjen|vannflate|vannkanten|havet|sjøen|overflaten|flytelinje|"
        "flytelinja|dvl|konstruksjonsvannlinje|konstruksjonsvannlinja|fribordet|vannivå|vannstand|over vannet|"
        "vannlinjas|sjø|under overflaten|under vannspeilet|neddykket|nedsenket"
    ),
    "AT_WATER": (
        "akkurat i vannlinjen|i vannlinjen|ved vannlinjen|like i vannlinja|i vannflaten|berører vannet|"
        "i vannlinja|akkurat ved vannflaten|på vannlinjen"
    ),
    "JUST_TOUCH": "tangerer|flukter|når akkurat|i flukt med",
    "BELOW": (
        "under vannet|under vannlinja|under vannlinjen|under vl|nedsenket|under vannflaten|under vann|i vannet|"
        "neddykket|derunder|under den|under overflaten|under vannspeilet|stikker under|går under"
    ),
    "BOOTSTRIPE": "vannlinjestripe|vannlinjestripen|vaterlinjestripe|boot top|vannlinjestripa",
    "TOERAIL": (
        "fotlist|fotlisten|skvettlist|rekkelist|esing|esingen|skandekk|fenderlist|tålist|fotrekke|fotlista|"
        "teaklist|fotreling|fotrekka|skandekket|lønning|essing|rekkelista"
    ),
    "COCKPIT": "cockpitdørk|cockpitdørken|cockpit|cockpitgulv|dørken|cockpitbunnen|cockpitgulvet|dørk",
    "STEP": (
        "badetrinn|trinn|badetrinnet|trinnet|innstøpt trinn|badetrapp|innstøpt badeplattform|"
        "integrert badeplattform|innebygd badeplattform"
    ),
    "ENDS": "slutter|ender|stopper|ender opp|tar slutt|opphører|avsluttes|sluttet",
    "STICK_OUT": (
        "stikker ut|stikker|rager ut|rager|stikker bakover|utstikk|går ut|stikker akterut|stikker ut bak|når ut|"
        "strekker seg|utstikkende|går bakover|skyter ut|stikker akterover|stikker bak|rager bakover|"
        "rager akterut|utspring|stikkende|går lengst|når bakover|går lengst bak"
    ),
    "M_TAPE": (
        "målebånd|meterstokk|målebåndet|tommestokk|meterstokken|målband|tommestokken|målestokk|med målebånd|"
        "med tommestokk|meterbånd|stålmålebånd|måleband|målbånd|metermål"
    ),
    "M_PHONE": (
        "vater app|vaterapp|mobilen|telefonen|vater på mobilen|mobilvater|mobil app|app|iphone|vaterpass app|"
        "vaterpassapp|telefonens vater|mobiltelefonen|med mobilen|med telefonen|app på mobilen|app på telefonen|"
        "telefonapp|mobilappen|vinkelapp|vater på telefonen|helningsapp|mobilens vater"
    ),
    "M_INCL": "vinkelmåler|helningsmåler|inklinometer|gradskive|vater|digitalt vater|vaterpass",
    "M_LASER": "laser|lasermåler|avstandsmåler",
    "M_DRAWING": (
        "tegning|tegningen|tegninger|tegningene|linjetegning|fra tegningen|konstruksjonstegning|"
        "konstruksjonstegninger|byggetegning|byggetegninger|verftets tegning|verftets tegninger|linjetegninger|"
        "seilplan|fra tegning|på tegningen|ifølge tegningen|etter tegning|verftstegning|arbeidstegning|"
        "profiltegning|av tegningen|ifølge tegning|generalarrangement|spanteriss|målt på tegningen|"
        "konstruktørens tegning"
    ),
    "M_BROCHURE": (
        "brosjyre|brosjyren|datablad|ifølge verftet|ifølge produsenten|katalog|spesifikasjon|målebrev|"
        "iflg verftet|manualen|ifølge brosjyren|ifølge brosjyre|i brosjyren|brosjyra|ifølge manualen|"
        "ifølge databladet|databladet|håndbok|håndboka|brukermanual|ifølge papirene|båtpapirer|verftets tall|"
        "verftets oppgave|oppgitt av verftet|fra verftet|prospekt|prospektet|spesifikasjoner|spesifikasjonene|"
        "ifølge spesifikasjonene|ifølge målebrevet|målebrevet|katalogen|ifølge katalogen|eierhåndbok|"
        "produsentens tall|oppgitt vekt|båttest|salgsbrosjyre|salgsoppgave"
    ),
    "M_GUESS": (
        "på øyemål|øyemål|anslått|anslag|anslagsvis|gjetter|gjetning|tipper|skjønn|på slump|sånn på øyemål|"
        "anslår|gjettet|gjetter på|skjønnsmessig|etter øyemål|med øyet|fra minnet|etter hukommelsen|på gefühlen|"
        "på skjønn|sånn cirka på øyet|på måfå|vil anslå|grovt anslått|ville gjette|etter hukommelse|øyemålet|"
        "vil gjette|et anslag|på en slump"
    ),
    "M_PHOTO": "foto|bilde|bildet|fra foto",
    "MEASURED": "målt|mål|målene|måling|målte|oppmålt",
    "PLUMB_LINE": (
        "loddsnor|loddsnoren|lodd snor|loddline|med lodd|lodd|loddsnora|lodsnor|et lodd|snor|tyngde i en snor|hyssing"
    ),
    "GIVE_TAKE": (
        "pluss minus|pluss eller minus|feilmargin|med en feilmargin på|feilmargin på|toleranse på|nøyaktighet på|"
        "med en nøyaktighet på|usikkerhet på|plussminus|med en usikkerhet på|margin på|pluss/minus|minus pluss"
    ),
    "WITHIN": "nøyaktig",
}
