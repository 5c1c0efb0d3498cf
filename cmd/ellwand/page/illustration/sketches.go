package illustration

import "github.com/paulmach/orb"

// line is a run of points; more than two make a curve.
type line = []orb.Point

// sketch is a garment seen from the front, on a dress stand. Its lines run down the
// right side.
type sketch struct {
	name   string
	rims   [][]line // closed shapes on the middle, in the order of drawing
	sleeve []line   // a closed shape on either side, drawn first
	seams  []line   // on either side
	once   []line   // not mirrored
	folds  []line   // on either side, as a fold lies
	top    float64  // the highest point shown
	low    float64  // the lowest point shown
	wide   float64  // half the width shown
	bare   bool     // without the stand
}

// Lines that several garments share.
var (
	roundNeck  = line{{0, 29}, {3.4, 28.2}, {6.2, 25}}
	highNeck   = line{{0, 27}, {3, 26.4}, {5.2, 24}}
	shoulder   = line{{6.2, 25}, {12, 26.9}, {18, 29.4}}
	nearNeck   = line{{5.2, 24}, {12, 26.7}, {18, 29.4}}
	armhole    = line{{18, 29.4}, {16, 35}, {17.4, 42}}
	longSleeve = []line{
		{{18, 29.4}, {23, 33}, {26, 42}, {29, 58}, {32, 80}}, {{32, 80}, {26.5, 81.5}},
		{{26.5, 81.5}, {23, 62}, {17.4, 42}}, {{17.4, 42}, {16, 35}, {18, 29.4}},
	}
	wideSleeve = []line{
		{{18, 29.4}, {24, 33}, {28, 43}, {31, 60}, {33.4, 76}}, {{33.4, 76}, {25.6, 78}},
		{{25.6, 78}, {23, 62}, {17.4, 44}}, {{17.4, 44}, {16, 35}, {18, 29.4}},
	}
	shortSleeve = []line{
		{{18, 29.4}, {23, 33}, {27, 45}}, {{27, 45}, {20, 48.6}},
		{{20, 48.6}, {17.4, 42}}, {{17.4, 42}, {16, 35}, {18, 29.4}},
	}
	waistband = []line{{{0, 62.6}, {13.2, 62}}, {{13.2, 62}, {13.6, 65.6}}, {{13.6, 65.6}, {0, 66.4}}}
)

// sketches of the gallery: our own drawings [source.OwnChoice].
var sketches = []sketch{
	{
		name: "blouse", sleeve: longSleeve, top: 14, low: 92, wide: 35,
		rims: [][]line{{roundNeck, shoulder, armhole,
			{{17.4, 42}, {17, 50}, {15, 62}, {16.6, 72}}, {{16.6, 72}, {8, 73.4}, {0, 73.6}}}},
		seams: []line{
			{{0, 31.4}, {4.4, 30.4}, {8.2, 26}}, {{25.4, 76.6}, {31.4, 75.4}}, {{17, 50}, {12.4, 48.6}},
			{{8.4, 62}, {8, 73}},
		},
	},
	{
		name: "shirt", sleeve: wideSleeve, top: 14, low: 98, wide: 36,
		rims: [][]line{
			{highNeck, nearNeck, {{18, 29.4}, {16.6, 36}, {17.6, 44}},
				{{17.6, 44}, {17.6, 64}, {18.4, 82}}, {{18.4, 82}, {14, 84.4}, {8, 88}, {0, 89}}},
			{{{0, 22.6}, {5.4, 21}}, {{5.4, 21}, {9, 31}}, {{9, 31}, {0, 26.6}}},
		},
		once: []line{
			{{1.6, 27}, {1.6, 89}}, {{-1.6, 27}, {-1.6, 89}}, {{7, 42}, {14, 42}}, {{7, 42}, {7, 51}},
			{{14, 42}, {14, 51}}, {{7, 51}, {10.5, 53.4}}, {{10.5, 53.4}, {14, 51}},
		},
		seams: []line{{{24.8, 72}, {32.8, 70}}, {{7, 28.6}, {17.4, 32.4}}},
	},
	{
		name: "princess dress", sleeve: longSleeve, top: 14, low: 140, wide: 36,
		rims: [][]line{{roundNeck, shoulder, armhole,
			{{17.4, 42}, {16.8, 50}, {13.8, 64}, {19, 84}, {25, 128}}, {{25, 128}, {12, 131.6}, {0, 132.4}}}},
		seams: []line{{{12, 26.9}, {10.4, 40}, {9.4, 50}, {7.6, 64}, {10, 86}, {13, 131}}},
	},
	{
		name: "dress", sleeve: shortSleeve, top: 14, low: 134, wide: 36,
		rims: [][]line{
			{{{0, 64}, {13.4, 64}}, {{13.4, 64}, {19, 84}, {26, 122}}, {{26, 122}, {13, 126}, {0, 127}}},
			{roundNeck, shoulder, armhole, {{17.4, 42}, {16.6, 50}, {13.4, 64}}, {{13.4, 64}, {0, 65}}},
		},
		seams: []line{{{16.6, 50}, {10.4, 48.4}}, {{7, 55}, {7, 64.6}}, {{7, 65}, {8, 76}}},
	},
	{
		name: "skirt", top: 50, low: 132, wide: 26,
		rims: [][]line{
			{{{0, 66}, {13.5, 65}}, {{13.5, 65}, {18.6, 83}, {21, 122}}, {{21, 122}, {10, 124.4}, {0, 125}}},
			waistband,
		},
		seams: []line{{{7, 66}, {8, 77}}},
	},
	{
		name: "circle skirt", top: 46, low: 132, wide: 40,
		rims: [][]line{
			{{{0, 66}, {13.5, 65}}, {{13.5, 65}, {23, 86}, {37, 114}},
				{{37, 114}, {34, 120}, {28, 117}, {22, 123.4}, {15, 119}, {8, 125}, {0, 120.4}}},
			waistband,
		},
		folds: []line{{{9.6, 67}, {16, 90}, {27, 116}}, {{5, 67}, {8, 92}, {14.6, 118}}, {{1.6, 67}, {1, 90}, {0, 119}}},
	},
	{
		name: "trousers", top: 55, low: 172, wide: 26,
		rims: [][]line{
			{{{0, 66}, {13.5, 65}}, {{13.5, 65}, {18.8, 84}, {19.4, 110}, {17.6, 166}},
				{{17.6, 166}, {6.4, 167}}, {{6.4, 167}, {3.6, 118}, {0, 93}}},
			waistband,
		},
		seams: []line{{{11, 66}, {17.6, 79}}, {{11.6, 90}, {12, 166}}, {{7, 66}, {7.6, 74}}},
		once:  []line{{{0, 66}, {0, 93}}, {{3, 66}, {3, 78}, {0, 84}}},
	},
	{
		name: "kaftan", top: 14, low: 150, wide: 46,
		rims: [][]line{{{{0, 30}, {3.6, 28.6}, {6.2, 25}}, {{6.2, 25}, {20, 28.4}, {44, 36}}, {{44, 36}, {42, 58}},
			{{42, 58}, {27, 56}, {21.6, 62}}, {{21.6, 62}, {23, 100}, {27, 142}}, {{27, 142}, {12, 144}, {0, 144.6}}}},
		seams: []line{{{22, 28.8}, {21, 56}}, {{42.4, 35.4}, {40.4, 57.8}}},
		once:  []line{{{0, 30}, {0, 48}}},
	},
	{
		name: "apron", top: 14, low: 130, wide: 32,
		rims: [][]line{{{{0, 38}, {10, 38}}, {{10, 38}, {11.4, 50}, {20, 62}}, {{20, 62}, {22, 116}},
			{{22, 116}, {10, 117.6}, {0, 118}}}},
		seams: []line{{{9, 38}, {6.4, 24.6}}, {{20, 62}, {25, 66}, {27, 76}}, {{11, 72}, {11, 90}}},
		once:  []line{{{-11, 72}, {11, 72}}, {{-11, 90}, {11, 90}}, {{0, 72}, {0, 90}}},
	},
	{
		name: "bag", top: 40, low: 132, wide: 28, bare: true,
		rims: [][]line{{{{0, 78}, {21, 78}}, {{21, 78}, {22, 120}}, {{22, 120}, {0, 121}}}},
		seams: []line{{{9, 84}, {10, 58}, {0, 47}}, {{12.4, 84}, {12, 56}, {0, 43.6}}, {{9, 84}, {12.4, 84}},
			{{0, 82}, {21, 82}}},
	},
}
