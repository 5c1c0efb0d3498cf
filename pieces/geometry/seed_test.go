package geometry

import "ellwand/testdata/sample"

func init() { sample.Rapid(100) }
