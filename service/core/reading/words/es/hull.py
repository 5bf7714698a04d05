"""Spanish: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "en el espejo|borde del espejo|canto del espejo|espejo|espejo de popa|popa|del espejo|espejos|"
        "espejo popa|borde superior del espejo|pie del espejo|inclinación del espejo|anchura del espejo|"
        "ancho del espejo|espejo invertido|popa invertida|espejo negativo|popa lanzada negativa|"
        "espejo de la popa|espejo popero|tabla de popa|trasera|culo del barco|plano de popa|cara de popa|"
        "espejo trasero|popa del barco|coronamiento|parte alta del espejo|parte baja del espejo|"
        "canto superior del espejo|canto inferior del espejo|borde inferior del espejo|espejito|contrahuella|"
        "tabica|de popa"
    ),
    "POST": "codaste|roda de popa|cabeza del codaste",
    "HULL": "tablazón|chapa|plancha|casco|laminado|forro|del casco|tablas|tablones|la chapa",
    "BOAT": (
        "barco|velero|embarcación|barco de vela|yate|queche|balandro|lancha|del barco|de barco|barco de acero|"
        "barco de madera|velero de acero|velero de aluminio|velero de madera|barco de aluminio"
    ),
    "PLUMB": (
        "es recto|es recta|vertical|a plomo|recto|verticales|aplomado|completamente vertical|casi vertical|recta|"
        "perfectamente vertical|prácticamente vertical|totalmente vertical|sin inclinación|ninguna inclinación|"
        "completamente recto|verticalmente|vertical del todo|cae a plomo|a escuadra|totalmente recto|"
        "prácticamente recto|casi recto|cero grados"
    ),
    "REVERSE": (
        "invertido|invertida|negativo|espejo invertido|negativa|popa invertida|espejo negativo|"
        "inclinación negativa|invertidos|popa lanzada negativa|inclinación inversa|inclinado a proa|"
        "negativamente|popa negativa|espejo inverso|inverso|inversa|inclinado hacia proa|lanzamiento negativo|"
        "invertidas|caída inversa|caída negativa|popa retroussé|contrapendiente|hacia dentro inclinado"
    ),
    "COUNTER": (
        "popa de bovedilla|espejo clásico|clásico|clásica|positivo|positiva|popa lanzada|popa clásica|"
        "espejo positivo|popa tradicional|espejo tradicional|popa normal|espejo normal|inclinado a popa|"
        "inclinado hacia popa|bovedilla|popa con bovedilla|lanzamiento de popa|lanzamiento clásico|positivos|"
        "popa de yate|espejo convencional|voladizo|bóveda|bovedillas"
    ),
    "SCOOP": (
        "moldeada en el casco|moldeado en el casco|integrada en el casco|integrado en el casco|"
        "formando parte del casco|laminada con el casco|plataforma de baño integrada|popa con escalón|"
        "escalón moldeado|escalón integrado|escalones moldeados|popa escalonada|popa con escalones|con escalón|"
        "plataforma integrada|escalón en la popa|popa de faldón|faldón|popa en escalones|escalones en la popa|"
        "popa con peldaños|escalones integrados|plataforma moldeada|plataforma de baño moldeada|"
        "plataforma de baño en el casco|bañera de popa moldeada|peldaños moldeados|escalón incorporado|"
        "escalones en el espejo|popa escalón|peldaño moldeado|popa de escalones"
    ),
    "OPEN": (
        "popa abierta|espejo abierto|popa está abierta|abierta|abierto|espejo abatible|popa totalmente abierta|"
        "sin espejo|panel abatible|popa abatible|espejo que se abate|popa totalmente despejada|bañera abierta|"
        "abierto por popa|abierta por popa|espejo rebatible|espejo que baja|popa rebatible|"
        "plataforma abatible de popa|sin espejo de popa|no tiene espejo|popa despejada|puerta de popa|portón|"
        "portón de popa|espejo basculante|abierto por detrás|bañera abierta a popa"
    ),
    "DOUBLE": (
        "doble proa|popa de canoa|popa noruega|de doble proa|popa afilada|popa en punta|popa redonda de canoa|"
        "canoa|dos proas|popa aguda|colin archer|popa puntiaguda|popa en forma de canoa|doble-proa|popa doble|"
        "terminada en punta|popa picuda|popa de ballenera|ballenera|popa en pico|proa y popa iguales|"
        "afilada a popa|popa canoa|canoera"
    ),
    "RUDDER": (
        "timón|pala|del timón|pala del timón|timones|dos timones|dos palas|borde de salida del timón|"
        "mecha del timón|eje del timón|mecha de timón|timón colgante|timón compensado|timón suspendido|"
        "timón de pala|timón colgado|timón colgado en el espejo|timón exterior|timón en el espejo|"
        "timón de espejo|timón principal|timón del barco|pala de timón|palas|palas del timón|timón propio|"
        "hoja del timón|timon|timón por fuera|timón externo|timón de fuera|pala exterior|pala colgada|de pala|"
        "tipo pala|pala suspendida|pala compensada|pie del timón|parte baja del timón|talón del timón|"
        "cabeza del timón|cabeza del timon|parte alta del timón|cabeza de la pala"
    ),
    "HUNG_OUT": (
        "colgada del espejo|va colgada|colgada en el espejo|colgada|timón colgado|colgado en el espejo|"
        "colgado del espejo|timón colgado en el espejo|timón exterior|va colgado|colgado|colgado de la popa|"
        "en el espejo|timón en el espejo|montado en el espejo|herrajes en el espejo|timón de espejo|"
        "fuera del espejo|colgado del codaste|exterior|en el codaste|va en el espejo|sujeto al espejo|"
        "timón por fuera|montado en popa|cuelga del espejo|cuelga de la popa|colgando del espejo|colgado en popa|"
        "sobre pinzotes|pinzotes|pinzote|machos y hembras|herrajes del espejo|por fuera del espejo|"
        "articulado en el espejo|fijado al espejo|fijado en el espejo|apoyado en el espejo|atornillado al espejo|"
        "va por fuera|timón externo|timón de fuera|cuelga en el espejo|colgados del espejo|cuelga fuera|"
        "montado sobre el espejo|pala exterior|pala colgada|colgado afuera|va colgado afuera|colgada afuera|"
        "colgada del codaste|cuelga del codaste"
    ),
    "HUNG_IN": (
        "cuelga de la quilla|colgado de la quilla|cuelga del skeg|colgado del skeg|va colgado del skeg|va en el skeg|"
        "en la quilla|va en la quilla|sujeto a la quilla|"
        "va detrás de la quilla|timón colgante|timón compensado|timón suspendido|suspendido|de pala|"
        "timón de pala|compensado|semicompensado|bajo el casco|colgante|con talón|tras la quilla|"
        "colgado bajo el casco|suspendida|tipo pala|semisuspendido|semi suspendido|sobre talón|tras un skeg|"
        "con medio skeg|medio skeg|semi skeg|detrás de la quilla|unido a la quilla|en el talón de la quilla|"
        "al final de la quilla|colgado bajo la popa|va bajo el casco|debajo de la popa|compensada|semicompensada|"
        "tipo espada|articulado en la quilla|con skeg completo|pala suspendida|pala compensada|"
        "tras la quilla corrida|detrás de la quilla corrida"
    ),
    "UNDER": (
        "en la quilla|bajo el casco|con skeg|skeg|debajo del casco|bajo el barco|debajo del barco|sobre skeg|"
        "en skeg|por debajo del casco|bajo la popa|metido bajo|escondido bajo|bajo la bañera|bajo el espejo|"
        "debajo de la popa|está debajo|va debajo|está abajo|va por debajo"
    ),
    "TRAILING": (
        "borde de salida|canto posterior|borde de popa|canto de popa|borde posterior|borde de salida del timón|"
        "borde trasero|canto de salida|parte más a popa|borde de fuga|canto de fuga|borde de atrás|canto trasero|"
        "filo posterior|filo trasero|borde popel|extremo trasero|punto más a popa|extremo popel|arista posterior|"
        "borde de salida de la pala|parte trasera del timón|borde de ataque trasero|canto de atrás|"
        "trasera del timón|borde salida|parte trasera de la pala|canto trasero de la pala|"
        "borde posterior de la pala"
    ),
    "STOCK": (
        "mecha|mecha del timón|eje del timón|mecha de timón|eje de la mecha|eje de giro del timón|limera|"
        "centro de la mecha|eje de la pala|mechas|eje timón|eje de giro|el eje del timón"
    ),
    "GRP": (
        "fibra maciza|fibra de vidrio maciza|poliéster macizo|poliéster|fibra|fibra de vidrio|prfv|plástico|"
        "resina|vidrio|poliester|plástico reforzado|gfk|fibras|vinilester|viniléster|vidrio poliéster|epoxi|frp|"
        "pvrf"
    ),
    "SOLID": (
        "sin sándwich|no es sándwich|macizo|fibra maciza|laminado macizo|maciza|sólido|sólida|laminado sólido|"
        "monolítico|poliéster macizo|fibra sólida|sin núcleo|laminado simple|poliéster sólido|"
        "laminado monolítico|fibra sin núcleo|sin sandwich|sin alma|monolítica|todo fibra|laminado a mano|"
        "poliester macizo|maciza de fibra|macizos|sin balsa|sin espuma|no lleva sándwich|no lleva núcleo|"
        "simple laminado"
    ),
    "CORED": (
        "sándwich|balsa|sándwich de balsa|espuma|núcleo|con núcleo|sándwich de espuma|airex|divinycell|"
        "espuma de pvc|núcleo de balsa|núcleo de espuma|alma de balsa|sandwich|construcción sándwich|en sándwich|"
        "laminado sándwich|balsa en medio|nido de abeja|con alma|sandwich de balsa|con núcleo de balsa|"
        "alma de espuma|tipo sándwich"
    ),
    "WOOD": (
        "velero de madera|madera epoxi|madera|contrachapado|caoba|roble|iroko|teca|tablazón|casco de madera|"
        "madera laminada|madera moldeada|contrachapado marino|tablazón de|madera y epoxi|madera-epoxi|"
        "forro de madera|barco de madera|madera maciza|tingladillo|en madera|okume|okumé|madera epoxy|"
        "construcción en madera|a tope de madera|de madera|de caoba|de teca|de roble|de iroko"
    ),
    "ALU": (
        "velero de aluminio|aluminio|casco de aluminio|en aluminio|aluminio soldado|chapa de aluminio|de alu|"
        "aluminio naval|aleación ligera|barco de aluminio|construido en aluminio|construcción en aluminio|"
        "de aluminio"
    ),
    "STEEL": (
        "acero|chapa de acero|casco de acero|acero naval|en acero|acero soldado|barco de acero|chapa naval|"
        "acero corten|construcción en acero|construido en acero|velero de acero|de chapa de acero|de acero"
    ),
    "YEAR": (
        "del|año|de|construido en|año de construcción|construido|construida en|botado en|botada|fabricado en|"
        "de construcción|del año|año de fabricación|modelo del año|matriculado|hecho en|botado"
    ),
    "HULL_NUMBER": (
        "número de casco|casco número|n de casco|casco n|casco nº|nº de casco|número del casco|núm de casco"
    ),
    "BUILDER": "astillero|constructor|constructores|construido por|fabricante",
    "MODEL": "modelo|barco|tipo|tipo de barco|modelo de barco|velero modelo|marca y modelo|velero",
}
