package draft

import "ellwand/testdata/sample"

func init() { sample.RapidOf(10, 400) }
