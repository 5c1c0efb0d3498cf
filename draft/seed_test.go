package draft

import "ellwand/testdata/sample"

func init() { sample.Rapid(20) }
