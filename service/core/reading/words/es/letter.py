"""Spanish: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "sí|si",
    "NOT": (
        "no|sin|ningún|ninguna|ni|ninguno|ningunos|tampoco|carece|nunca|no hay|no llevo|no tiene|no lleva|ni hay|"
        "no tengo|no tenemos|jamás"
    ),
    "OTHER_BOAT": (
        "antes teníamos|antes tenía|anteriormente teníamos|el amarre mide|el amarre tiene|"
        "el suyo|la suya|vecin*|vecino|amigo|barco anterior|vecinos|un amigo|amigos|mi amigo|barco de antes|"
        "otro barco|antiguo barco|el de mi|compañero|hermano|cuñado|pantalán de al lado|vecina|anterior barco|"
        "barco vecino|barco de al lado|el de al lado|compañero de pantalán|vecino de amarre|vecino de pantalán|"
        "primo|tío|suegro|colega|barco gemelo|otro propietario|un conocido|mi antiguo barco|"
        "nuestro antiguo barco|nuestro anterior barco|mi anterior barco|velero anterior|el otro barco|"
        "de un amigo|del vecino|mi vecino|amiga|una amiga|compañero de club|barco de un amigo|su barco|"
        "en el suyo|el del vecino|el de un amigo|"
        "no es la nuestra|no es el nuestro|no la nuestra|no es la mía|no es el mío"
    ),
    "WITHDRAW": (
        "no tengan en cuenta|no tenga en cuenta|no tengáis en cuenta|olvidad|descarten|no hagan caso|olvide|"
        "olviden|olvida|anular|no vale|estaba mal|erróneo|errónea|incorrecto"
    ),
    "MEANT": (
        "invertido las cifras|invertí las cifras|bailaron las cifras|cambiado las cifras|quería decir|"
        "quise decir|en vez de|en lugar de|corrección|corrijo|me equivoqué|debe decir|errata|rectifico|error|"
        "en realidad|correcto"
    ),
    "OURS": (
        "hermano y yo|amigo y yo|cuñado y yo|nuestro|tenemos|el mío|en el mío|en el nuestro|mi barco|"
        "nuestro barco|el nuestro"
    ),
    "ASK": (
        "consulta|queremos saber|presupuesto|qué soporte|harían falta|precio|cuánto|necesito|necesitamos|"
        "quisiera|me recomiendan|recomiendan|recomendáis|me aconsejan|qué modelo|cuál|cuesta|costaría|precios|"
        "información|pregunta|preguntar|serviría|sirve|valdría|haría falta|hace falta|desearía|solicito|"
        "solicitar|pedir|cotización|busco|buscamos|adecuado|podrían|pueden|necesitaría|saber"
    ),
    "GEAR": (
        "timón de viento|piloto de viento|veleta|timones de viento|pilotos de viento|piloto eólico|"
        "gobierno por viento|timón auxiliar|veleta de viento|servo|autotimón|timón automático de viento|"
        "autotimón de viento"
    ),
    "ORDER": (
        "repuesto|repuestos|pedido|número de serie|recambio|recambios|pieza|piezas|casquillos|casquillo|"
        "pedir piezas|nº de serie|roto|rota|reponer|envío|gastados"
    ),
    "OWNED": "mi timón de viento|comprado en|compré|instalado desde",
    "THANKS": (
        "dar las gracias|daros las gracias|darle las gracias|darles las gracias|daros las|agradecerle|"
        "agradecerles|agradeceros|agradezco|agradecemos|gracias por todo|hemos llegado|contentos|contento|llegamos|"
        "muchas gracias|muchísimas gracias|agradecido|agradecer|encantados|satisfecho|llegó"
    ),
    "SIGN_OFF": (
        "quedamos a la espera|quedo a la espera|en espera de|un saludo|saludos|atentamente|saludos cordiales|"
        "cordialmente|gracias|un cordial saludo|un abrazo|cordial saludo|reciban un cordial|gracias de antemano|"
        "gracias por adelantado|a la espera|abrazos|saludos desde|saludo|atte|buena proa|muchas gracias|"
        "gracias y un|recibid un|un fuerte abrazo|saludos a todos|cordiales saludos|hasta pronto|buenos vientos|"
        "buen viento|saludos náuticos|reciba un saludo|un saludo cordial|afectuosamente|sin otro particular|"
        "le saluda|les saludo|mil gracias|muchísimas gracias|se agradece|muy agradecido|agradecido"
    ),
    "CUSTOMER": "cliente|un cliente|clientes|para un cliente|armador|nuestro cliente|por cuenta de",
    "COMPANY": (
        "náutica|s l|astilleros|astillero|efectos navales|velería|varadero|náuticos|yates|servicios náuticos|"
        "motonáutica|jarcia|deportes náuticos"
    ),
    "PHONE": "tel|tfno|móvil|teléfono|tlf|teléf|tfo|cel|celular|mov|whatsapp|t",
    "FAX": "fax|cif|nif",
    "SELL": (
        "boletín|darse de baja|cancelar la suscripción|descuento|descuentos|feria|expositores|haga clic|"
        "oferta especial|posicionamiento|promoción|rebajas"
    ),
    "INSTEAD": "en vez de|en lugar de",
    "OOPS": "perdón|no|mejor dicho|digo|quiero decir|corrijo|perdone|perdonen|me equivoco|disculpe|rectifico|o mejor",
}
