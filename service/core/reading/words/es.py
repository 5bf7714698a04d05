"""Spanish."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="es",
    common="el la los las de del y es un una con por para que en se no su al lo nuestro mi tenemos tengo buenas buenos "
    "días tardes queremos saber qué hola gracias más está muy sobre como me les sus este esta son hay pero ya le "
    "nos cuál desde hasta tiene quisiera",
    numbers=Numbers(
        ones="cero un/uno/una dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince "
        "dieciséis diecisiete dieciocho diecinueve",
        tens="veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa",
        joint="{ten} y {one}",
        hundred="cien/ciento",
        half="medio/media",
        and_="y",
        whole="veintiuno=21 veintiún=21 veintidós=22 veintitrés=23 veinticuatro=24 veinticinco=25 veintiséis=26 "
        "veintisiete=27 veintiocho=28 veintinueve=29 tres_cuartos_de=0.75",
    ),
    concepts={
        "LENGTH": "de eslora total|de largo|largo|de eslora",
        "M_TAPE": "cinta métrica|metro|con metro|con cinta|cinta|flexómetro|cinta de medir",
        "DEPTH": "profundidad|fondo|profundo|profunda|de fondo|de profundidad",
        "TRANSOM": "borde del espejo|canto del espejo|"
        "espejo|espejo de popa|popa|del espejo|espejos|el espejo|de popa|espejo popa|borde superior del espejo|"
        "pie del espejo|inclinación del espejo|anchura del espejo|ancho del espejo|espejo invertido|"
        "popa invertida|espejo negativo|popa lanzada negativa",
        "POST": "codaste|el codaste|roda de popa|cabeza del codaste",
        "TOP": "cabeza del codaste|"
        "borde del espejo|canto del espejo|"
        "hasta la cubierta|a la cubierta|"
        "sube hasta|llega hasta|"
        "canto alto|parte superior|borde superior|canto superior|parte alta|borde de arriba|canto de arriba|"
        "arriba|borde alto|parte de arriba|lo alto|el de arriba|la parte alta|extremo superior|"
        "borde superior del espejo|superior|el superior",
        "BOTTOM": "baja hasta|llega por abajo|"
        "parte inferior|borde inferior|canto inferior|borde de abajo|canto de abajo|abajo|canto bajo|borde bajo|"
        "parte baja|el de abajo|extremo inferior|parte de abajo|pie del espejo|inferior|el inferior",
        "WATER": "en el agua|"
        "agua|línea de flotación|flotación|el agua|lámina de agua|superficie|superficie del agua|nivel del agua|"
        "la flotación|lin flotación|francobordo|bajo el agua|por debajo del agua|bajo la flotación|"
        "por debajo de la flotación|debajo del agua|por debajo de la línea de flotación|"
        "bajo la línea de flotación|a ras de agua|a ras del agua|justo en el agua|toca el agua|"
        "en la línea de flotación|en la flotación|a flor de agua|justo en la flotación|a nivel del agua",
        "TOERAIL": "regala|tapa de regala|amurada|cintón|carril de regala|tapa regala",
        "STEP": "escalón|peldaño|escalones|peldaños|escalón de baño|escalón moldeado",
        "HULL": "tablazón|chapa|plancha|casco|laminado|forro|del casco",
        "BOAT": "barco|velero|embarcación|barco de vela|yate|queche|balandro|lancha|del barco|de barco",
        "HEIGHT": "altura|alto|alto de|de alto|altura de|francobordo|de altura",
        "WIDTH": "anchura|ancho|ancho de|de ancho|anchura de|de anchura|ancha|anchura del espejo|ancho del espejo",
        "THICK": "espesor|grosor|grueso|de espesor|de grosor|grueso de|de grueso|espesores",
        "LOA": "eslora|eslora total|eslora máxima|longitud total|eslora casco|eslora del casco|largo total",
        "LWL": "eslora en flotación|eslora de flotación|eslora flotación",
        "BEAM": "manga|manga máxima|ancho máximo|manga total",
        "DRAFT": "calado",
        "DISPLACEMENT": "desplazamiento|peso|pesa|desplaza|pesando|peso total|peso en carga|desplazando|pesar|toneladas de peso|"
        "grúa|pesado",
        "BALLAST": "lastre|motor|auxiliar|quilla|bulbo|neumática|ancla|tripulación|dinghy|plomo",
        "RAKE": "inclinación|ángulo|inclinado|grados de inclinación|caída|inclinación del espejo|lanzamiento|pendiente",
        "LEAN": "inclinado|inclinada|se inclina|inclina|cae|se tumba|tumbado|lanzado|tiene una inclinación|inclinados|"
        "ladeado|se inclina hacia",
        "FORWARD": "hacia proa|más a proa|por delante|hacia delante|a proa|más adelante|hacia adelante|delante|delante del|"
        "adelantado|por delante del|más hacia proa|a proa del|por la proa",
        "AFT": "hacia popa|más a popa|por detrás|hacia atrás|por detrás del|a popa|más atrás|detrás|detrás del|atrás|"
        "retrasado|más hacia popa|a popa del|por la popa|hacia la popa|por detrás del espejo",
        "PLUMB": "es recto|es recta|"
        "vertical|a plomo|recto|verticales|aplomado|completamente vertical|casi vertical|recta",
        "REVERSE": "invertido|invertida|negativo|espejo invertido|negativa|popa invertida|espejo negativo|"
        "inclinación negativa|invertidos|popa lanzada negativa",
        "COUNTER": "popa de bovedilla|espejo clásico|clásico|clásica|positivo|positiva|popa lanzada|popa clásica|"
        "espejo positivo",
        "SCOOP": "plataforma de baño integrada|"
        "popa con escalón|escalón moldeado|escalón integrado|escalones moldeados|popa escalonada|"
        "popa con escalones|con escalón|plataforma integrada|escalón en la popa|popa de faldón|faldón",
        "OPEN": "popa abierta|espejo abierto|popa está abierta|abierta|abierto|espejo abatible|popa totalmente abierta|"
        "sin espejo|panel abatible|popa abatible|espejo que se abate",
        "DOUBLE": "doble proa|popa de canoa|popa noruega|de doble proa|popa afilada|popa en punta|popa redonda de canoa|"
        "canoa|dos proas|popa aguda|colin archer",
        "RUDDER": "timón|pala|del timón|pala del timón|timones|el timón|dos timones|dos palas|borde de salida del timón|"
        "mecha del timón|eje del timón|mecha de timón|timón colgante|timón compensado|timón suspendido|"
        "timón de pala|timón colgado|timón colgado en el espejo|timón exterior|timón en el espejo|timón de espejo",
        "HUNG_OUT": "colgada del espejo|va colgada|colgada en el espejo|colgada|"
        "timón colgado|colgado en el espejo|colgado del espejo|timón colgado en el espejo|timón exterior|"
        "va colgado|colgado|colgado de la popa|en el espejo|timón en el espejo|montado en el espejo|"
        "herrajes en el espejo|timón de espejo|fuera del espejo|colgado del codaste|exterior|en el codaste|"
        "va en el espejo|sujeto al espejo",
        "HUNG_IN": "timón colgante|timón compensado|timón suspendido|suspendido|de pala|timón de pala|compensado|"
        "semicompensado|bajo el casco|colgante|con talón|tras la quilla",
        "UNDER": "en la quilla|"
        "bajo el casco|con skeg|skeg|debajo del casco|bajo el barco|debajo del barco|sobre skeg|en skeg|"
        "por debajo del casco|bajo la popa",
        "TRAILING": "borde de salida|canto posterior|borde de popa|canto de popa|borde posterior|borde de salida del timón|"
        "borde trasero|canto de salida|parte más a popa",
        "STOCK": "mecha|mecha del timón|eje del timón|mecha de timón",
        "STICK_OUT": "saca|sale hacia atrás|sobresale|asoma|sale|saliente|sobresaliendo|se proyecta|sobresalen",
        "TURN": "a cada banda|giro máximo|giro|a cada lado|por banda|ángulo máximo|a ambas bandas|gira",
        "GRP": "fibra maciza|fibra de vidrio maciza|poliéster macizo|"
        "poliéster|fibra|fibra de vidrio|prfv|plástico|resina|vidrio",
        "SOLID": "sin sándwich|no es sándwich|"
        "macizo|fibra maciza|laminado macizo|maciza|sólido|sólida|laminado sólido|monolítico|poliéster macizo|"
        "fibra sólida|sin núcleo|laminado simple",
        "CORED": "sándwich|balsa|sándwich de balsa|espuma|núcleo|con núcleo|sándwich de espuma",
        "WOOD": "madera epoxi|madera|de madera|contrachapado|caoba|roble|iroko|teca|tablazón",
        "ALU": "aluminio|de aluminio",
        "STEEL": "acero|de acero|chapa de acero",
        "O_LADDER": "escalera|escalera de baño|escalerilla|escala|escalera plegable|escalera fija|escaleras|escala de baño",
        "O_PLATFORM": "plataforma|plataforma de baño|plataformas|bañera de baño|plataforma de popa|plataforma fija",
        "O_DAVITS": "pescantes|pescante|pescantes de popa|grúas para el auxiliar|serviolas",
        "O_OUTBOARD": "fueraborda|fuera borda|motor fueraborda|motor auxiliar fueraborda|soporte de fueraborda|"
        "soporte del fueraborda|motor fuera borda|soporte para fueraborda",
        "O_EXHAUST": "escape|salida de escape|escape del motor|tubo de escape",
        "O_RAIL": "púlpito de popa|balcón de popa|púlpito|balcón|barandilla|candeleros de popa|balcón popa|balcones de popa",
        "O_STAY": "backstay|estay de popa|estay popero|backstays|burdas|backstay doble|pata de gallo|estay de popa doble",
        "O_BOOM": "botavara de mesana|botavara|pico de la botavara|botavaras",
        "O_ARCH": "arco|arco de popa|arco radar|arco de acero|arco inox|arco solar",
        "O_PANELS": "placas solares|paneles solares|panel solar|placa solar|paneles",
        "O_MAST": "aerogenerador|palo de radar|palo del aerogenerador|generador eólico|mástil de radar",
        "O_PASSERELLE": "pasarela|la pasarela|pasarelas",
        "FOLD": "que se levanta|para plegar|"
        "plegable|abatible|plegables|abatibles|se abate|se pliega|plegado|rebatible|que se abate|que se pliega|"
        "basculante|se levanta|retráctil|se recoge|escalera plegable",
        "FIXED": "fija|fijo|soldado|fijas|fijos|atornillada|atornillado|soldada|rígida|rígido|remachada|firme|"
        "escalera fija|plataforma fija",
        "REMOVE": "podemos prescindir|puedo prescindir|podríamos prescindir|"
        "se puede mover|se puede cambiar de sitio|puede ir en otro sitio|"
        "se desmontará|se desmontarán|se quitará|se quitarán|"
        "desmontable|se puede quitar|quitar|desmontables|puede quitarse|se puede desmontar|se pueden quitar|"
        "podemos quitar|puedo quitar|desmontar|removible|se podría quitar|puede desmontarse|se pueden desmontar|"
        "quitarla|quitarlo|se puede retirar|retirar|podría ir fuera",
        "KEEP": "seguir usando|seguir utilizando|seguir usándola|"
        "no queremos quitar|no quiero quitar|no queremos perder|no se quitan|"
        "debe quedarse|se queda|conservar|tienen que quedarse|tiene que quedarse|deben quedarse|"
        "queremos conservar|quiero conservar|mantener|conservarla|conservarlo|ha de quedarse|tiene que seguir|"
        "debe seguir|no se puede quitar|no se puede desmontar|queremos mantener|quiero mantener|imprescindible|"
        "debe permanecer|se quedan|no se toca|hay que conservar|no se pueden quitar",
        "YES": "sí|si",
        "NOT": "no|sin|ningún|ninguna|ni|ninguno|ningunos|tampoco|carece|nunca|no hay|no llevo|no tiene|no lleva|ni hay|"
        "no tengo|no tenemos|jamás",
        "PORT": "babor|a babor|banda de babor|izquierda|lado de babor|a la izquierda|por babor",
        "STARBOARD": "estribor|a estribor|banda de estribor|derecha|lado de estribor|a la derecha|por estribor",
        "CENTRE": "centro|crujía|en el centro|línea de crujía|la crujía|central|del centro|en medio|en crujía|de crujía|"
        "eje|centrada|centrado",
        "EACH_SIDE": "a cada lado|por cada banda|a ambos lados|a ambas bandas|en cada banda|uno a cada banda",
        "PREFER": "me gustaría montarlo|nos gustaría montarlo|querríamos|"
        "preferimos|prefiero|preferiría|preferimos montarlo|preferencia|preferible|preferiríamos|mejor|"
        "nos gustaría|me gustaría|de preferencia|a ser posible|si es posible",
        "OTHER_BOAT": "el suyo|la suya|"
        "vecin*|"
        "vecino|amigo|barco anterior|vecinos|un amigo|amigos|mi amigo|barco de antes|otro barco|antiguo barco|"
        "el de mi|compañero|hermano|cuñado|pantalán de al lado|vecina|anterior barco",
        "BELOW": "metido|metida|en el agua|"
        "bajo el agua|por debajo del agua|sumergido|sumergida|bajo la flotación|por debajo de la flotación|"
        "debajo del agua|por debajo de la línea de flotación|bajo la línea de flotación|por debajo",
        "OURS": "hermano y yo|amigo y yo|cuñado y yo|"
        "el nuestro|nuestro|tenemos|el mío|en el mío|en el nuestro|mi barco|nuestro barco",
        "YEAR": "del|año|de|construido en|año de construcción|construido|construida en|botado en|botada|fabricado en|"
        "de construcción|del año|año de fabricación|modelo del año|matriculado",
        "HULL_NUMBER": "número de casco|casco número|n de casco|casco n|casco nº|nº de casco|número del casco|núm de casco",
        "BUILDER": "astillero|constructor|constructores|construido por|fabricante",
        "MODEL": "modelo|barco|tipo|tipo de barco|modelo de barco|velero modelo|marca y modelo|velero",
        "ASK": "consulta|queremos saber|presupuesto|qué soporte|harían falta|precio|cuánto|necesito|necesitamos|"
        "quisiera|me recomiendan|recomiendan|recomendáis|me aconsejan|qué modelo|cuál|cuesta|costaría|precios|"
        "información|pregunta|preguntar|serviría|sirve|valdría|haría falta|hace falta|desearía|solicito|"
        "solicitar|pedir|cotización|busco|buscamos|adecuado|podrían|pueden|necesitaría|saber",
        "GEAR": "timón de viento|piloto de viento|veleta|timones de viento|pilotos de viento|piloto eólico|"
        "gobierno por viento|timón auxiliar|veleta de viento|servo|autotimón",
        "ORDER": "repuesto|repuestos|pedido|número de serie|recambio|recambios|pieza|piezas|casquillos|casquillo|"
        "pedir piezas|nº de serie|roto|rota|reponer|envío|gastados",
        "THANKS": "muchas gracias|muchísimas gracias|agradecido|agradecer|encantados|satisfecho|llegó",
        "SIGN_OFF": "quedamos a la espera|quedo a la espera|en espera de|"
        "un saludo|saludos|atentamente|saludos cordiales|cordialmente|gracias|un cordial saludo|un abrazo|"
        "cordial saludo|reciban un cordial|gracias de antemano|gracias por adelantado|a la espera|"
        "quedo a la espera|abrazos|saludos desde|saludo|atte|buena proa|muchas gracias|gracias y un|recibid un",
        "CUSTOMER": "cliente|un cliente|clientes|para un cliente|armador|nuestro cliente|por cuenta de",
        "COMPANY": "náutica|s l|astilleros|astillero|efectos navales|velería|varadero|náuticos|yates|servicios náuticos|"
        "motonáutica|jarcia|deportes náuticos",
        "PHONE": "tel|tfno|móvil|teléfono|tlf|teléf|tfo|cel|celular|mov|whatsapp|t",
        "FAX": "fax|cif|nif",
        "M_PHONE": "teléfono móvil|nivel del móvil|app del móvil|con el móvil|aplicación|nivel del teléfono",
        "M_INCL": "inclinómetro|clinómetro|transportador|nivel digital",
        "M_LASER": "láser",
        "M_DRAWING": "plano|planos|dibujo|del plano|planos del astillero",
        "M_BROCHURE": "folleto|ficha técnica|catálogo|según el astillero|manual|según fábrica",
        "M_GUESS": "a ojo|estimado|estimada|calculo a ojo|estimación|a ojo de buen cubero|al tanteo|estimo|a simple vista",
        "M_PHOTO": "foto|fotos|fotografía",
        "GIVE_TAKE": "más o menos|más menos|con un error de|con un margen de",
        "BOOTSTRIPE": "franja de flotación|línea de agua pintada|franja",
        "COCKPIT": "bañera|piso de la bañera|suelo de la bañera|fondo de la bañera|plan de la bañera",
        "O_BOOMKIN": "botalón de popa|batículo|arbotante",
        "O_STAFF": "asta|asta de bandera|mástil de bandera",
        "O_LOCKER": "cofre de gas|balsa salvavidas|tambucho",
        "SLIDE": "telescópica|corredera|extensible|deslizante",
        "SWING": "giratoria|orientable|pivotante",
        "AVOID": "en ningún caso|evitar|nunca en|evitando|de ninguna manera",
        "WITHDRAW": "olvide|olviden|olvida|anular|no vale|estaba mal|erróneo|errónea|incorrecto",
        "MEANT": "quería decir|quise decir|en vez de|en lugar de|corrección|corrijo|me equivoqué|debe decir|errata|"
        "rectifico|error|en realidad|correcto",
        "JUST_TOUCH": "roza|coincide",
        "OWNED": "mi timón de viento|comprado en|compré|instalado desde",
        "SELL": "boletín|darse de baja|cancelar la suscripción|descuento|descuentos|feria|expositores|haga clic|"
        "oferta especial|posicionamiento|promoción|rebajas",
        "INSTEAD": "en vez de|en lugar de",
        "PLUMB_LINE": "plomada|hilo de plomada|hilo a plomo",
        "MEASURED": "medidas|medido|medida|medí|mediciones|tomadas|he medido|dimensiones",
        "AT_WATER": "a ras de agua|a ras del agua|justo en el agua|toca el agua|en la línea de flotación|en la flotación|"
        "a flor de agua|justo en la flotación|a nivel del agua",
        "OOPS": "perdón|no|mejor dicho|digo|quiero decir|corrijo|perdone|perdonen|me equivoco|disculpe|rectifico|"
        "o mejor",
        "GONE": "vendido|vendida|lo vendimos|la vendimos|"
        "está desmontado|está desmontada|ya desmontado|ya desmontada|"
        "en el cofre|en un cofre|guardamos|guardo en|va guardado|va guardada|guardado en|guardada en|"
        "estibado|estibada|se queda en tierra|"
        "ya la saqué|la saqué|lo saqué|la quité|lo quité|ya no está|ya no hay|la hemos quitado|"
        "lo hemos quitado|fue retirada|la sacamos|la quitamos|los quitamos",
        "ENDS": "termina|acaba",
        "BESIDE": "junto al|junto a|al lado del|al lado de la|cerca del|cerca de la",
        "BEGIN": "empieza|comienza|a partir de",
        "EXCEPT": "salvo|excepto|aparte de|solo|sólo|únicamente",
    },
)
