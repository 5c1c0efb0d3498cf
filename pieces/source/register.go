package source

// What has no one source.
var (
	// CommonPractice is what many handbooks and workrooms do alike.
	CommonPractice = Source{Kind: Practice, Work: "common practice"}
	// OwnChoice is chosen for Ellwand: where its constructions are its own, and
	// how finely it reckons.
	OwnChoice = Source{Kind: Choice, Work: "our own choice"}
	// Measured was found by trying it on the example jobs.
	Measured = Source{Kind: Trial, Work: "measured by us"}
	// Geometry follows from the shapes themselves.
	Geometry = Source{Kind: Mathematics, Work: "geometry"}
)

// Handbooks.
var (
	// Aldrich is the women's table, read from a reprint.
	Aldrich = Source{Handbook, "Aldrich, Metric Pattern Cutting for Women's Wear", "6th edition", false}
	// AldrichFromMemory is the rest of her table, and her skirt and trousers.
	AldrichFromMemory = Source{Handbook, "Aldrich, Metric Pattern Cutting for Women's Wear", "5th edition", true}
	// AldrichMenswear is the men's table.
	AldrichMenswear = Source{Handbook, "Aldrich, Metric Pattern Cutting for Menswear", "", true}
	// AldrichChildren is the children's table.
	AldrichChildren = Source{Handbook, "Aldrich, Metric Pattern Cutting for Children's Wear and Babywear", "", true}
	// Armstrong is the skirt and the trousers that ours are checked against.
	Armstrong = Source{Handbook, "Armstrong, Patternmaking for Fashion Design", "5th edition", true}
	// Bunka is the bodice that is drafted from three measurements.
	Bunka = Source{Handbook, "Bunka Fashion College, Fundamentals of Garment Design", "2009", true}
	// Burnham is the garments that are cut straight from the width of the loom.
	Burnham = Source{Handbook, "Burnham, Cut My Cote", "Royal Ontario Museum, 1973", true}
	// CarrLatham is the terms of the nap.
	CarrLatham = Source{Handbook, "Carr and Latham, The Technology of Clothing Manufacture", "", true}
	// VilumsoneNemes is how dense a marker can be.
	VilumsoneNemes = Source{Handbook, "Vilumsone-Nemes, Industrial Cutting of Textile Materials", "", false}
)

// Standards.
var (
	// ISO8559 defines the measurements of the body.
	ISO8559 = Source{Standard, "ISO 8559-1, Size designation of clothes: Anthropometric definitions for body " +
		"measurement", "", false}
	// EN13402 steps the sizes.
	EN13402 = Source{Standard, "EN 13402-3, Size designation of clothes: Measurements and intervals", "", true}
	// ASTMD5585 is the misses' table.
	ASTMD5585 = Source{Standard, "ASTM D5585-11e1, Standard Tables of Body Measurements for Adult Female Misses " +
		"Figure Type", "", false}
	// YardAndPound is the inch and the yard in metres, exact.
	YardAndPound = Source{Standard, "international yard and pound agreement, 1959", "", false}
	// ISO216 is the papers of the A series.
	ISO216 = Source{Standard, "ISO 216, Writing paper and certain classes of printed matter: Trimmed sizes", "", true}
	// PWG5101 is the papers of North America.
	PWG5101 = Source{Standard, "PWG 5101.1, Standard for Media Standardized Names", "", true}
	// HPGL2 is the language of plotters.
	HPGL2 = Source{Handbook, "Hewlett-Packard, The HP-GL/2 and HP RTL Reference Guide", "", true}
	// PDF17 is the longest page.
	PDF17 = Source{Standard, "ISO 32000-1, Portable document format: PDF 1.7, annex C", "", true}
	// D6673 lays down how patterns are written as DXF, in layers and texts.
	D6673 = Source{Standard, "ASTM D6673-10, Sewn Products Pattern Data Interchange", "by its public description", true}
	// SVG is how drawings of lines are written as text.
	SVG = Source{Standard, "W3C, Scalable Vector Graphics (SVG) 1.1 (Second Edition) and 2", "", false}
)

// ConversionChart turns metres of one width into another.
var ConversionChart = Source{Chart,
	"the fabric conversion chart of an extension service (Rutgers Cooperative Extension), as reprinted in sewing guides",
	"", false}
