// QPDF's headers. Inside core/record only.
#pragma once

#ifdef __clang_analyzer__ // clang-tidy 14 can't read qpdf/JSON.hh beside GCC 12's library, and nothing here
                          // needs it
#define JSON_HH
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>
class JSON;
#endif

#include <qpdf/Buffer.hh>
#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEFStreamObjectHelper.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>
#include <qpdf/QPDFXRefEntry.hh>
#include <qpdf/QUtil.hh>
