"""Spanish: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "borde del espejo|canto del espejo|espejo|espejo de popa|popa|del espejo|espejos|el espejo|de popa|"
        "espejo popa|borde superior del espejo|pie del espejo|inclinación del espejo|anchura del espejo|"
        "ancho del espejo|espejo invertido|popa invertida|espejo negativo|popa lanzada negativa|"
        "espejo de la popa|espejo popero|tabla de popa|trasera|culo del barco|plano de popa|cara de popa|"
        "espejo trasero|popa del barco|coronamiento|parte alta del espejo|parte baja del espejo|"
        "canto superior del espejo|canto inferior del espejo|borde inferior del espejo|espejito"
    ),
    "POST": "codaste|el codaste|roda de popa|cabeza del codaste",
    "HULL": "tablazón|chapa|plancha|casco|laminado|forro|del casco",
    "BOAT": "barco|velero|embarcación|barco de vela|yate|queche|balandro|lancha|del barco|de barco",
    "PLUMB": (
        "es recto|es recta|vertical|a plomo|recto|verticales|aplomado|completamente vertical|casi vertical|recta"
    ),
    "REVERSE": (
        "invertido|invertida|negativo|espejo invertido|negativa|popa invertida|espejo negativo|"
        "inclinación negativa|invertidos|popa lanzada negativa"
    ),
    "COUNTER": (
        "popa de bovedilla|espejo clásico|clásico|clásica|positivo|positiva|popa lanzada|popa clásica|espejo positivo"
    ),
    "SCOOP": (
        "plataforma de baño integrada|popa con escalón|escalón moldeado|escalón integrado|escalones moldeados|"
        "popa escalonada|popa con escalones|con escalón|plataforma integrada|escalón en la popa|popa de faldón|"
        "faldón"
    ),
    "OPEN": (
        "popa abierta|espejo abierto|popa está abierta|abierta|abierto|espejo abatible|popa totalmente abierta|"
        "sin espejo|panel abatible|popa abatible|espejo que se abate"
    ),
    "DOUBLE": (
        "doble proa|popa de canoa|popa noruega|de doble proa|popa afilada|popa en punta|popa redonda de canoa|"
        "canoa|dos proas|popa aguda|colin archer"
    ),
    "RUDDER": (
        "timón|pala|del timón|pala del timón|timones|el timón|dos timones|dos palas|borde de salida del timón|"
        "mecha del timón|eje del timón|mecha de timón|timón colgante|timón compensado|timón suspendido|"
        "timón de pala|timón colgado|timón colgado en el espejo|timón exterior|timón en el espejo|timón de espejo"
    ),
    "HUNG_OUT": (
        "colgada del espejo|va colgada|colgada en el espejo|colgada|timón colgado|colgado en el espejo|"
        "colgado del espejo|timón colgado en el espejo|timón exterior|va colgado|colgado|colgado de la popa|"
        "en el espejo|timón en el espejo|montado en el espejo|herrajes en el espejo|timón de espejo|"
        "fuera del espejo|colgado del codaste|exterior|en el codaste|va en el espejo|sujeto al espejo"
    ),
    "HUNG_IN": (
        "timón colgante|timón compensado|timón suspendido|suspendido|de pala|timón de pala|compensado|"
        "semicompensado|bajo el casco|colgante|con talón|tras la quilla"
    ),
    "UNDER": (
        "en la quilla|bajo el casco|con skeg|skeg|debajo del casco|bajo el barco|debajo del barco|sobre skeg|"
        "en skeg|por debajo del casco|bajo la popa"
    ),
    "TRAILING": (
        "borde de salida|canto posterior|borde de popa|canto de popa|borde posterior|borde de salida del timón|"
        "borde trasero|canto de salida|parte más a popa"
    ),
    "STOCK": "mecha|mecha del timón|eje del timón|mecha de timón",
    "GRP": (
        "fibra maciza|fibra de vidrio maciza|poliéster macizo|poliéster|fibra|fibra de vidrio|prfv|plástico|"
        "resina|vidrio"
    ),
    "SOLID": (
        "sin sándwich|no es sándwich|macizo|fibra maciza|laminado macizo|maciza|sólido|sólida|laminado sólido|"
        "monolítico|poliéster macizo|fibra sólida|sin núcleo|laminado simple"
    ),
    "CORED": "sándwich|balsa|sándwich de balsa|espuma|núcleo|con núcleo|sándwich de espuma",
    "WOOD": "madera epoxi|madera|de madera|contrachapado|caoba|roble|iroko|teca|tablazón",
    "ALU": "aluminio|de aluminio",
    "STEEL": "acero|de acero|chapa de acero",
    "YEAR": (
        "del|año|de|construido en|año de construcción|construido|construida en|botado en|botada|fabricado en|"
        "de construcción|del año|año de fabricación|modelo del año|matriculado"
    ),
    "HULL_NUMBER": (
        "número de casco|casco número|n de casco|casco n|casco nº|nº de casco|número del casco|núm de casco"
    ),
    "BUILDER": "astillero|constructor|constructores|construido por|fabricante",
    "MODEL": "modelo|barco|tipo|tipo de barco|modelo de barco|velero modelo|marca y modelo|velero",
}
