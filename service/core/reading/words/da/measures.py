"""Danish: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "lang over alt|lang",
    "HEIGHT": "højde|højden|høj|fribord|højt|højde over|højder|høje|højdemål|i højden|højere|højde på",
    "WIDTH": (
        "bredde|bredden|bred|bredt|brede|i bredden|bredde foroven|bredde øverst|spejlets bredde|bredder|"
        "fra side til side|tværskibs|på tværs|spejlbredde|agterspejlsbredde|breddemål|i bredde"
    ),
    "THICK": (
        "tykkelse|tyk|tykkelsen|tykt|tykke|godstykkelse|skrogtykkelse|laminattykkelse|pladetykkelse|tykkelser|"
        "vægtykkelse|materialetykkelse|spejltykkelse|pladetykkelsen|godstykkelsen|skrogtykkelsen|tykkere|godset|"
        "samlet tykkelse"
    ),
    "DEPTH": "på langs|langskibs|fra for til agter|forfra og bagud|fra forkant til agterkant|dyb|dybden|dybde|dybt",
    "LOA": (
        "over alt|"
        "længde|længden|længde over alt|loa|bådens længde|længde o a|l o a|total længde|skroglængde|"
        "længde overalt|l.o.a|skroglængden|bådlængde|overalt|største længde|længde på båden|totallængde|"
        "bådlængden"
    ),
    "LWL": "lvl|vandlinjelængde|længde i vandlinjen|lwl|længde vl",
    "BEAM": (
        "største bredde|bådens bredde|bredde max|max bredde|maks bredde|bredde over alt|total bredde|bådbredde|"
        "skrogbredde|bredde overalt|bmax|bredeste sted|bådens største bredde|bredde maks"
    ),
    "DRAFT": (
        "stikker|dybgang|dybdegang|dybgående|stikker dybt|dybgang på|dybgående på|dybgangen|stikdybde|går dybt|dybgangs"
    ),
    "DISPLACEMENT": (
        "deplacement|deplacementet|vægt|vejer|vægten|deplacerer|bådens vægt|totalvægt|vejet|lastet vægt|kran|"
        "tung|vejede|egenvægt|tørvægt|tomvægt|kranvægt|sejlklar|vægt på|deplacement på|tonnage|på vægten|"
        "båden vejer|løftevægt|fuldt udrustet|vejning"
    ),
    "BALLAST": "ballast|kjøl|motor|jolle|kølen|køl|motoren|jollen|anker|besætning|ballastkøl|gummibåd",
    "RAKE": (
        "hældning|vinkel|hældningen|hældningsvinkel|vinklen|spejlets hældning|skråning|hældning på|"
        "hækkens hældning|fra lodret|fra lodlinjen|ud af lod|mod lodret|fra vertikalen|hældningsgrad|"
        "spejlhældning|skråstilling|agterspejlets hældning|hældningsvinklen|i forhold til lodret"
    ),
    "LEAN": (
        "hælder|hældende|skråner|skrå|falder|hældning|hælde|vinklet|skråt|hældes|skrånende|skråtstillet|lener|"
        "læner|læner sig|falder ud|hælder ud|skæv|vippet|skråtstående"
    ),
    "TURN": (
        "til hver side|rorutslag|til hver sin side|hver vej|til begge sider|max udslag|udslag|rorudslag|"
        "til hver af siderne|per side|max rorudslag|rorvinkel|maksimalt udslag|maksimalt rorudslag|rorudslaget|"
        "udslaget|til begge kanter|fuldt udslag|i hver retning|maks udslag|udslag på|hver retning|"
        "til hver af sider|rorvinklen|hver kant|til hver kant"
    ),
    "FORWARD": (
        "forover|længere fremme|foran|fremad|længere fremad|længere forude|længere frem|længere forud|forud|"
        "fremover|mod stævnen|foran hækken|foran spejlet|for hækken|mod boven|længere foran|indad|mod forstævnen|"
        "foran agterspejlet|forude|ind mod cockpittet|forligere|længere forover|foroverhældende|indenfor|"
        "fremefter|for spejlet|for agterspejlet|for overkanten"
    ),
    "AFT": (
        "agterover|længere agter|længere agterud|bagud|agten for|bag|længere tilbage|længere bagud|agterud|"
        "mod hækken|agtenfor|bagved|agter|ud bag|bag hækken|bag spejlet|agter for|længere bagude|agterligere|"
        "agtenom|ud bagud|bagefter|bag ved|længere bagud end|udad|bagover|agterefter|agter for spejlet|"
        "bag agterspejlet|længere tilbage end|agter ud|udenfor spejlet|bag overkanten"
    ),
    "TOP": (
        "rorets top|rorhoved|rorhovedet|toppen af roret|rortop|rortoppen|stævnens top|stævntoppen|"
        "kanten af spejlet|kanten af agterspejlet|spejlkanten|til dæk|til dækket|op til dækket|går op til|"
        "når op til|overkant|overkanten|øverst|øverste kant|øvre kant|foroven|oppe|toppen|overkanten af|øverste|"
        "top|dækskanten|i toppen|hækkens overkant|toppen af stævnen|toppen af agterstævnen|bredde foroven|"
        "bredde øverst|øverste punkt|højeste punkt|øverste del|overside|oversiden|foroven på|øverste ende|"
        "kanten foroven|øvre del|dækshøjde|dækskant|topkant|topkanten|højeste|oventil|på toppen|øvre ende|"
        "øverste rand|overkants|hækkens overside|spejlets overkant|agterspejlets overkant|fra dæk|dækket|"
        "fra dækket"
    ),
    "BOTTOM": (
        "rorets underkant|bunden af roret|underkanten af roret|går ned til|underkant|underkanten|nederkant|"
        "nederste kant|nedre kant|forneden|nederst|nede|bunden af spejlet|underside|hækkens underkant|"
        "nederste punkt|laveste punkt|nederste del|undersiden|nederste ende|kanten forneden|nedre del|bundkant|"
        "bunden|laveste|nedentil|i bunden|foden|nedre ende|nederste rand|nederste|underkants|"
        "agterspejlets underkant|spejlets underkant"
    ),
    "WATER": (
        "vandlinjen|vandlinien|vandet|vand|vandoverfladen|vandspejlet|vl|kvl|vandlinje|vandets overflade|"
        "vandlinie|havet|fribord|under vandet|under vandlinjen|under vandoverfladen|under vl|under vand|i vandet|"
        "under vandlinien|lige i vandlinjen|i vandlinjen|ved vandlinjen|i vandoverfladen|rører vandet|"
        "lige ved vandet|på vandlinjen|vandlinjens|vandlinjens niveau|vandniveau|vandstand|vandspejl|"
        "vandoverflade|overfladen|havoverfladen|søen|konstruktionsvandlinje|konstruktionsvandlinjen|dvl|"
        "flydelinje|flydelinjen|fribordet|vandkanten|vandfladen|vandflade|vandets|vandlinjer|under overfladen|"
        "under vandspejlet|nedsænket|neddykket|stikker under vandet"
    ),
    "AT_WATER": (
        "lige i vandlinjen|i vandlinjen|ved vandlinjen|i vandoverfladen|rører vandet|lige ved vandet|på vandlinjen"
    ),
    "JUST_TOUCH": "flugter|tangerer|i vandskorpen|når lige|på højde med",
    "BELOW": (
        "under vandet|under vandlinjen|under vandoverfladen|under vl|nedsænket|under vand|i vandet|neddykket|"
        "under vandlinien|derunder|herunder|under overfladen|under vandspejlet|dykker|går under|"
        "stikker under vandet"
    ),
    "BOOTSTRIPE": "vandlinjestribe|vandlinjestriben|boot top|vandliniestribe|bådtop",
    "TOERAIL": (
        "fotlist|fotlisten|fodliste|fodlisten|lønning|lønningen|skandæk|essing|fenderliste|teakliste|fodrækværk|"
        "rælingsliste|skandækket|fodlister|fodrælingen|fodræling"
    ),
    "COCKPIT": (
        "cockpitdørk|cockpitdørken|cockpit|cockpittets dørk|cockpitbund|cockpitgulv|dørken|cockpitbunden|dørk|"
        "cockpitgulvet"
    ),
    "STEP": (
        "badetrinn|trinn|badetrin|badetrinet|trin|trinet|indstøbt trin|badetrappe|indstøbt badeplatform|"
        "integreret badeplatform|støbt badeplatform"
    ),
    "ENDS": "slutter|ender|stopper|hører op|ophører|afsluttes|sluttede|holder op",
    "STICK_OUT": (
        "stikker ut|stikker|stikker ud|rager ud|rager|stikker bagud|udstik|går ud|rager agterud|stikker agterud|"
        "når ud|strækker sig|udragende|går bagud|skyder ud|udhæng|stikker bag|fremspring|rager bagud|udspring|"
        "går længst|når bagud|går længst bagud"
    ),
    "M_TAPE": (
        "målebånd|målebåndet|tommestok|tommestokken|metermål|med målebånd|med tommestok|stålmålebånd|meterstok|"
        "målestok|måleband|tømrermål|målebåndets|rullemål|metermålet|zollstok|skydelære"
    ),
    "M_PHONE": (
        "telefonen|mobilen|vaterpas på mobilen|app|mobiltelefonen|iphone|vaterpas app|vaterpasapp|"
        "telefonens vaterpas|med mobilen|med telefonen|app på mobilen|app på telefonen|telefonapp|"
        "mobilens vaterpas|mobilappen|vinkelapp|vaterpasset på telefonen|vaterpas i telefonen"
    ),
    "M_INCL": "vinkelmåler|hældningsmåler|inklinometer|vaterpas|digitalt vaterpas",
    "M_LASER": "laser|lasermåler|afstandsmåler",
    "M_DRAWING": (
        "tegning|tegningen|tegninger|tegningerne|linjetegning|fra tegningen|konstruktionstegning|"
        "konstruktionstegninger|byggetegning|byggetegninger|værftets tegning|værftets tegninger|linjetegninger|"
        "sejlplan|på tegningen|ifølge tegningen|efter tegning|værftstegning|arbejdstegning|af tegningen|"
        "ifølge tegning|generalplan|spanterids|konstruktørens tegning|profiltegning"
    ),
    "M_BROCHURE": (
        "brochure|brochuren|datablad|ifølge værftet|ifølge producenten|katalog|specifikation|målebrev|"
        "iflg værftet|manualen|ifølge brochuren|ifølge brochure|i brochuren|ifølge manualen|ifølge databladet|"
        "databladet|håndbog|håndbogen|ejermanual|ifølge papirerne|bådpapirer|værftets tal|værftets oplysning|"
        "oplyst af værftet|fra værftet|prospekt|prospektet|specifikationer|specifikationerne|"
        "ifølge specifikationerne|ifølge målebrevet|målebrevet|kataloget|ifølge kataloget|producentens tal|"
        "bådtest|salgsopstilling|salgsbrochure|klassemålebrev"
    ),
    "M_GUESS": (
        "på øjemål|øjemål|anslået|anslag|skønnet|skønsmæssigt|gætter|gæt|skønner|et skøn|på slump|anslår|skøn|"
        "gætter på|gættet|efter øjemål|med øjet|efter hukommelsen|et gæt|vil skyde på|skyder på|anslagsvis|"
        "groft skønnet|på øjet|efter bedste skøn|på må og få|ville gætte|tommelfinger|kvalificeret gæt|øjemålt|"
        "sådan på øjemål"
    ),
    "M_PHOTO": "foto|billede|billedet|fra foto",
    "MEASURED": "målt|mål|målene|måling|målte|opmålt",
    "PLUMB_LINE": "lodsnor|lodsnoren|lodline|med lod|lod|et lod|blylod|snor|lod i en snor|vægt i en snor",
    "GIVE_TAKE": (
        "plus minus|plus eller minus|med en fejlmargin på|fejlmargin på|fejlmargin|tolerance på|nøjagtighed på|"
        "med en nøjagtighed på|usikkerhed på|plusminus|med en usikkerhed på|margin på|plus/minus"
    ),
    "WITHIN": "nøjagtigt",
}
